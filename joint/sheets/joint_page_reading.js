'use strict';
// The gap readings at the chosen hole: what is typed is kept or stays as a draft, and what
// is unlikely or does not serve is remarked, never refused.

let reading = {mark: null, state: 'dry', typed: false};  // whose fields are shown

function typedTexts() { return {top: byId('gap-top').value.trim(), low: byId('gap-low').value.trim()}; }

function minus(number) { return String(number).replace('-', '−'); }

function inPageUnit(number) {
  return `${minus(+Number(number).toFixed(page.unit_mm === 1 ? 2 : 3))} ${page.unit}`;
}

/** Whether a reading leaves the adhesive's window. */
function outside(gap) {
  if (gap === '' || !page.window) return false;
  const mm = Number(gap) * page.unit_mm;
  return mm < page.window[0] - 1e-6 || mm > page.window[1] + 1e-6;
}

/** Says of a reading that it is farther from another gap than the window is wide. */
function farFrom(gap, other, what) {
  if (gap === '' || other === '' || isNaN(other) || !page.window) return null;
  const apart = Number(gap) - Number(other);
  if (Math.abs(apart) * page.unit_mm <= page.window[1] - page.window[0] + 1e-6) return null;
  return `is ${inPageUnit(Math.abs(apart))} ${apart > 0 ? 'more' : 'less'} than ${what} (${minus(other)}): measure again`;
}

/** The stack along the bit with the gap as read, taken as straight from top to low edge. */
function stackAsRead(hole, read) {
  const more = [['top', 0], ['low', 2]].map(([where, i]) =>
    read[where] === '' || isNaN(hole.drawn[i]) ? null : (read[where] - hole.drawn[i]) * page.unit_mm);
  if (more[0] === null && more[1] === null) return null;
  const [top, low] = [more[0] ?? more[1], more[1] ?? more[0]];
  return hole.section.stack + top + (low - top) * hole.section.entry[1] / hole.section.lap;
}

/** Whether the fastener of the schedule still serves with the gap as read. */
function stackRemark(hole, read) {
  const stack = stackAsRead(hole, read);
  if (stack === null || hole.section.length === null) return [];
  // tables of grips leave a little between one length and the next
  const takes = ([, least, greatest]) => stack >= least - 0.03 && stack <= greatest + 1e-3;
  const planned = page.serves.find(([length]) => length === hole.length);
  if (planned && takes(planned)) return [];
  const serves = page.serves.find(takes);
  const says = `With this gap the stack is about ${inPageUnit(stack / page.unit_mm)}`;
  return [serves ? `${says}: it takes a fastener x ${serves[0]}, not x ${hole.length}.`
    : `${says}: no fastener in stock serves.`];
}

/** What is to be said of the gaps of a reading; empty if nothing is. */
function gapRemarks(hole, state, read) {
  const says = [];
  for (const [where, i, place] of [['top', 0, 'At hull top'], ['low', 2, 'At low edge']]) {
    const gap = read[where];
    if (gap === '') continue;
    const faults = [farFrom(gap, hole.drawn[i], 'drawn'),
      ...states.filter((other) => other !== state).map((other) =>
        farFrom(gap, record.read[hole.mark]?.[other]?.[where] ?? '', `the reading ${other}`))];
    if (outside(gap)) faults.unshift(`is outside the window of ${page.window_text}`);
    if (Number(gap) < 0) faults.unshift(`is interference, ${inPageUnit(-gap)} in each other’s way`);
    if (Number(gap) === 0) faults.unshift('is 0: the parts touch');
    const told = faults.filter((fault) => fault !== null);
    if (told.length > 0) says.push(`${place} ${minus(gap)} ${told.join('; ')}.`);
  }
  return says;
}

/** What is to be said of a reading; empty if nothing is. */
function remarks(hole, state, read) {
  return [...gapRemarks(hole, state, read), ...stackRemark(hole, read)];
}

function isRemarked(hole, state, where, gap) {
  return gapRemarks(hole, state, {top: '', low: '', [where]: gap}).length > 0;
}

function readingText(hole) {
  const read = record.read[hole.mark], drafts = record.drafts[hole.mark] ?? {};
  const shown = (state, where) => read[state][where] === '' ? '–'
    : minus(read[state][where]) + (isRemarked(hole, state, where, read[state][where]) ? ' !' : '');
  const kept = states.filter((state) => read?.[state])
    .map((state) => `${state} ${shown(state, 'top')} / ${shown(state, 'low')}` +
      (stackRemark(hole, read[state]).length > 0 ? ' ! fastener' : ''));
  const typed = Object.entries(drafts).map(([state, texts]) =>
    `${state} typed, not kept: ${texts.top || '–'} / ${texts.low || '–'}`);
  return (kept.length > 0 ? `gap read ${kept.join('; ')}` : '') +
    (kept.length > 0 && typed.length > 0 ? '; ' : '') + typed.join('; ');
}

function setAt(of, mark, state, value) {
  const all = {...of[mark]};
  delete all[state];
  if (value) all[state] = value;
  if (Object.keys(all).length > 0) of[mark] = all;
  else delete of[mark];
}

/** Shows the reading of the chosen hole in the state that is picked. */
function showReading() {
  const state = byId('gap-state').value;
  const draft = record.drafts[chosen]?.[state], read = record.read[chosen]?.[state];
  byId('gap-top').value = (draft ?? read)?.top ?? '';
  byId('gap-low').value = (draft ?? read)?.low ?? '';
  for (const id of ['gap-top', 'gap-low']) byId(id).removeAttribute('aria-invalid');
  byId('reading-says').textContent = draft ? 'Typed here, not kept yet.'
    : read ? remarks(holes.get(chosen), state, read).join(' ') : '';
  reading = {mark: chosen, state, typed: Boolean(draft)};
}

/** What stands in the fields as a reading; marks what is no gap. */
function readFields() {
  const texts = typedTexts();
  const top = readGap(texts.top, page.unit_mm), low = readGap(texts.low, page.unit_mm);
  byId('gap-top').setAttribute('aria-invalid', String(Boolean(top.wrong)));
  byId('gap-low').setAttribute('aria-invalid', String(Boolean(low.wrong)));
  return {top: top.gap, low: low.gap, wrong: top.wrong ?? low.wrong};
}

function takeReading(mark, state, read) {
  setAt(record.drafts, mark, state, null);
  setAt(record.read, mark, state, read.top === '' && read.low === '' ? null : {top: read.top, low: read.low});
  keep();
  showHole(holes.get(mark));
}

/** Lets what is typed and not kept stay as a draft. */
function draftReading() {
  if (!reading.typed || reading.mark === null) return;
  const texts = typedTexts(), {mark, state} = reading;
  setAt(record.drafts, mark, state, texts.top === '' && texts.low === '' ? null : texts);
  keep();
  showHole(holes.get(mark));
}

/** Keeps what was typed when its fields go to another hole, state or hull; says what became of it. */
function leaveReading() {
  if (!reading.typed || reading.mark === null) return '';
  const {mark, state} = reading, read = readFields();
  reading.typed = false;
  if (read.wrong) {
    reading.typed = true;
    draftReading();
    reading.typed = false;
    return `The reading ${state} at ${mark} is not kept, it waits there as typed: ${read.wrong}.`;
  }
  if (read.top !== '' || read.low !== '') {
    takeReading(mark, state, read);
    const shown = (gap) => gap === '' ? '–' : minus(gap);
    return [`Reading kept at ${mark}, ${state}: ${shown(read.top)} / ${shown(read.low)} ${page.unit}.`,
      ...remarks(holes.get(mark), state, read)].join(' ');
  }
  setAt(record.drafts, mark, state, null);
  keep();
  showHole(holes.get(mark));
  return record.read[mark]?.[state]
    ? `The emptied reading ${state} at ${mark} is still kept: “Keep reading” there forgets it.` : '';
}

/** Shows the fields of the chosen hole, and what became of those before. */
function turnReading() {
  const word = leaveReading();
  showReading();
  byId('bar-says').textContent = word;
}

function keepReading(event) {
  event.preventDefault();
  const read = readFields(), state = byId('gap-state').value;
  if (read.wrong) {
    byId('reading-says').textContent = read.wrong;
    return;
  }
  takeReading(chosen, state, read);
  showReading();
  byId('bar-says').textContent = '';
  byId('reading-says').textContent = !record.read[chosen]?.[state] ? `No reading ${state} at ${chosen}.`
    : [`Kept at ${chosen}, ${state}.`, ...remarks(holes.get(chosen), state, read)].join(' ');
}

/** Keypads for numbers may lack a minus: a button turns the sign of a field. */
function turnSign() {
  const field = byId(reading.field ?? 'gap-top'), text = field.value.trim().replace('−', '-');
  field.value = text.startsWith('-') ? text.slice(1) : '-' + text;
  reading.typed = true;
  field.focus();
}

function startReading() {
  byId('reading').addEventListener('submit', keepReading);
  byId('reading').addEventListener('input', (event) => {
    if (event.target.id !== 'gap-state') reading.typed = true;
  });
  byId('reading').addEventListener('focusin', (event) => {
    if (event.target.matches('#gap-top, #gap-low')) reading.field = event.target.id;
  });
  byId('gap-state').addEventListener('change', turnReading);
  byId('gap-sign').addEventListener('click', turnSign);
  window.addEventListener('pagehide', draftReading);
}
