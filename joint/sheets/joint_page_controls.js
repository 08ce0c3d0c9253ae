'use strict';
// The hull's record in the page, the filters of the schedule, and the size of the plan.

let hull = '', record = emptyRecord();

function say(text, wrong) {
  byId('message').textContent = text;
  byId('message').classList.toggle('wrong', Boolean(wrong));
}

function hullName(name) { return name === '' ? 'the hull without a number' : `hull ${name}`; }

/** Whether a reading leaves the adhesive's window. */
function outside(gap) {
  if (gap === '' || !page.window) return false;
  const mm = Number(gap) * page.unit_mm;
  return mm < page.window[0] - 1e-6 || mm > page.window[1] + 1e-6;
}

function readingText(read) {
  const shown = (gap) => gap === '' ? '–' : gap + (outside(gap) ? ' !' : '');
  return states.filter((state) => read?.[state])
    .map((state) => `${state} ${shown(read[state].top)} / ${shown(read[state].low)}`).join('; ');
}

function showHole(hole) {
  const drilled = Boolean(record.drilled[hole.mark]);
  for (const part of hole.parts) part.classList.toggle('drilled', drilled);
  for (const [part, name] of hole.names) {
    part.setAttribute('aria-checked', String(drilled));
    part.setAttribute('aria-label', name + (drilled ? ', drilled' : ''));
  }
  hole.row.querySelector('input').checked = drilled;
  const read = readingText(record.read[hole.mark]);
  hole.row.querySelector('.read').textContent = read === '' ? '' : `; gap read ${read}`;
  if (hole.mark !== chosen) return;
  byId('hole-drilled').checked = byId('bar-drilled').checked = drilled;
}

function showCount() {
  const drilled = Object.keys(record.drilled).length, read = Object.keys(record.read).length;
  byId('hull-count').textContent = `${drilled} of ${holes.size} drilled, gaps read at ${read}`;
  byId('hull-printed').textContent = hull === '' ? '____________________' : hull;
  byId('hull-list').replaceChildren(...keptHulls().here.map((name) => {
    const option = document.createElement('option');
    option.value = name;
    return option;
  }));
}

function showRecord() {
  for (const hole of holes.values()) showHole(hole);
  showCount();
  showReading();
  filterRows();
}

function keep() {
  if (!keepRecord(hull, record))
    say('This browser keeps nothing here: save to a file before you close the page.', true);
  showCount();
}

function tick(mark, drilled) {
  if (drilled) record.drilled[mark] = true;
  else delete record.drilled[mark];
  say(`${mark} ${drilled ? 'drilled' : 'not drilled'}, ${hullName(hull)}.`);
  keep();
  showHole(holes.get(mark));
  filterRows();
}

/** Goes to another hull; what was ticked before a number was given goes along. */
function changeHull(name) {
  const next = loadRecord(name);
  const carried = hull === '' && name !== '' && !isEmpty(record) && isEmpty(next);
  if (carried) {
    keepRecord('', emptyRecord());
    keepRecord(name, record);
  } else {
    record = next;
  }
  hull = name;
  try {
    store().setItem(JSON.stringify(['sheerlap hull', page.title, page.layout]), hull);
  } catch (refused) {
    // it is asked for again when the page is next opened
  }
  byId('hull-number').value = hull;
  showRecord();
  say(carried ? `What was ticked so far is now of ${hullName(hull)}.` : `This is ${hullName(hull)}.`);
}

// the reading at the chosen hole

function showReading() {
  const read = record.read[chosen]?.[byId('gap-state').value];
  byId('gap-top').value = read?.top ?? '';
  byId('gap-low').value = read?.low ?? '';
  byId('reading-says').textContent = '';
}

function keepReading(event) {
  event.preventDefault();
  const top = readGap(byId('gap-top').value, page.unit_mm), low = readGap(byId('gap-low').value, page.unit_mm);
  byId('gap-top').setAttribute('aria-invalid', String(Boolean(top.wrong)));
  byId('gap-low').setAttribute('aria-invalid', String(Boolean(low.wrong)));
  const says = byId('reading-says'), state = byId('gap-state').value;
  if (top.wrong || low.wrong) {
    says.textContent = top.wrong ?? low.wrong;
    return;
  }
  const read = {...record.read[chosen]};
  delete read[state];
  if (top.gap !== '' || low.gap !== '') read[state] = {top: top.gap, low: low.gap};
  if (Object.keys(read).length > 0) record.read[chosen] = read;
  else delete record.read[chosen];
  keep();
  showHole(holes.get(chosen));
  showReading();
  const out = outside(top.gap) || outside(low.gap);
  says.textContent = !read[state] ? `No reading ${state} at ${chosen}.`
    : `Kept at ${chosen}, ${state}.` + (out ? ` Outside the window of ${page.window_text}.` : '');
}

// to and from a file

function save() {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([recordFile(hull, record)], {type: 'text/csv'}));
  link.download = `readings-${hull === '' ? 'no-number' : hull.replace(/[^\p{L}\p{N}.-]+/gu, '-')}.csv`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10000);
  say(`Saved as ${link.download}.`);
}

async function load(event) {
  const file = event.target.files[0];
  if (!file) return;
  const text = await file.text();
  event.target.value = '';
  const found = readRecordFile(text);
  if (found.wrong) {
    say(`${file.name} was not loaded; nothing is changed.\n${found.wrong.join('\n')}`, true);
    return;
  }
  changeHull(found.hull ?? hull);
  Object.assign(record.drilled, found.record.drilled);
  for (const [mark, read] of Object.entries(found.record.read))
    record.read[mark] = {...record.read[mark], ...read};
  keep();
  showRecord();
  say(`Loaded from ${file.name} for ${hullName(hull)}: ${found.readings} readings and ` +
    `${Object.keys(found.record.drilled).length} drilled holes, added to what was there.`);
}

/** Asks once more by its own name before it clears. */
function clear(event) {
  const button = event.currentTarget;
  if (button.dataset.asked !== hull) {
    button.dataset.asked = hull;
    button.textContent = `Press again to forget all of ${hullName(hull)}`;
    return;
  }
  calm();
  record = emptyRecord();
  keep();
  showRecord();
  say(`All of ${hullName(hull)} is forgotten.`);
}

function calm() {
  delete byId('clear').dataset.asked;
  byId('clear').textContent = 'Clear this hull';
}

// the schedule's filters

function filterRows() {
  const text = byId('filter-text').value.trim().toLowerCase(), side = byId('filter-side').value;
  const jig = byId('filter-jig').value, flagged = byId('filter-flagged').checked, open = byId('filter-open').checked;
  let shown = 0;
  for (const hole of holes.values()) {
    const {row} = hole;
    const fits = (text === '' || row.textContent.toLowerCase().includes(text)) &&
      (side === '' || hole.side === side) && (jig === '' || row.dataset.jigs.split(' ').includes(jig)) &&
      (!flagged || 'flagged' in row.dataset) && (!open || !record.drilled[hole.mark]);
    for (const part of hole.parts) part.classList.toggle('aside', !fits);
    row.hidden = !fits;
    shown += fits ? 1 : 0;
  }
  const lost = chosen !== null && holes.get(chosen).row.hidden ? `; ${chosen}, the chosen one, is not among them` : '';
  byId('filter-count').textContent = `${shown} of ${holes.size} holes shown${lost}`;
  const rows = shownParts(byId('schedule-table'));
  if (rows.length > 0 && !rows.some((row) => focusOf(row).tabIndex === 0)) setStop(rows[0]);
}

function zoom(times) {
  byId('plan-sheet').style.setProperty('--zoom', times);
  for (const button of document.querySelectorAll('[data-zoom]'))
    button.setAttribute('aria-pressed', String(button.dataset.zoom === times));
  if (chosen !== null) showWithin(holes.get(chosen).parts[0]);
}

function greet() {
  const {elsewhere} = keptHulls();
  if (!store()) say('This browser keeps nothing here: save to a file before you close the page.', true);
  else if (elsewhere > 0)
    say(`This browser also keeps ticks of another layout of this boat (${elsewhere} ` +
      `${elsewhere === 1 ? 'hull' : 'hulls'}): they are not shown here, and stay with the page they were made on.`, true);
  else say('');
}

function start() {
  document.documentElement.classList.add('with-script');
  try {
    hull = store().getItem(JSON.stringify(['sheerlap hull', page.title, page.layout])) ?? '';
  } catch (refused) {
    hull = '';
  }
  byId('hull-number').value = hull;
  record = loadRecord(hull);
  document.addEventListener('tick', (event) => tick(event.detail, !record.drilled[event.detail]));
  document.addEventListener('chosen', (event) => {
    byId('bar-drilled').disabled = false;
    showHole(event.detail);
    showReading();
    filterRows();
  });
  byId('schedule-table').addEventListener('change', (event) =>
    tick(event.target.closest('.hole').dataset.mark, event.target.checked));
  for (const id of ['hole-drilled', 'bar-drilled'])
    byId(id).addEventListener('change', (event) => tick(chosen, event.target.checked));
  byId('hull-number').addEventListener('change', (event) => changeHull(event.target.value.trim()));
  byId('reading').addEventListener('submit', keepReading);
  byId('gap-state').addEventListener('change', showReading);
  byId('save').addEventListener('click', save);
  byId('load').addEventListener('change', load);
  byId('clear').addEventListener('click', clear);
  byId('clear').addEventListener('blur', calm);
  byId('print').addEventListener('click', () => window.print());
  byId('filter').addEventListener('input', filterRows);
  byId('filter').addEventListener('submit', (event) => event.preventDefault());
  byId('filter').addEventListener('reset', () => setTimeout(filterRows));
  for (const button of document.querySelectorAll('[data-zoom]')) 
    button.addEventListener('click', () => zoom(button.dataset.zoom));
  window.addEventListener('storage', () => {
    record = loadRecord(hull);
    showRecord();
  });
  showRecord();
  greet();
  if (byId('plan-sheet').clientWidth < 700) zoom('4');
  choose(decodeURIComponent(location.hash.slice(1)), null);
}

start();
