'use strict';
// One hole is chosen, in the plan, the charts, the schedule and the panel alike; and the
// focus goes from hole to hole by the arrow keys.

const byId = (id) => document.getElementById(id);
/** Whether a hole's part is a row of a table: of the schedule, or of the fasteners' use. */
const isRow = (part) => part.tagName === 'TBODY' || part.tagName === 'TR';
const holes = new Map(page.holes.map((hole, index) => [hole.mark, {...hole, index, parts: []}]));
for (const part of document.querySelectorAll('.hole[data-mark]'))
  holes.get(part.dataset.mark).parts.push(part);
for (const hole of holes.values()) {
  hole.row = hole.parts.find((part) => part.tagName === 'TBODY');
  hole.cells = [...hole.row.rows[0].cells];
  hole.names = hole.parts.filter((part) => !isRow(part))
    .map((part) => [part, part.getAttribute('aria-label')]);
}
const columns = [...byId('schedule-table').tHead.rows[0].cells].map((cell) => ({
  name: cell.querySelector('b').textContent,
  unit: cell.querySelector('b').nextSibling?.textContent.replace(/^, /, '').trim() ?? '',
  what: cell.querySelector('span')?.textContent ?? ''}));
let chosen = null;

/** The text of a hole's cell under a heading of the schedule. */
function cellText(hole, name) {
  return hole.cells[columns.findIndex((column) => column.name === name)].textContent;
}

/** What stands of a hole in the words below its numbers: because, keep-out, note. */
function wordsOf(hole, kind) { return hole.row.querySelector(`.${kind}`)?.textContent ?? ''; }

/** What takes the focus of a hole's part. */
function focusOf(part) { return isRow(part) ? part.querySelector('.mark') : part; }

/** Makes a part the one of its group that Tab comes to. */
function setStop(part) {
  const group = part.closest('.roving');
  for (const stop of group.querySelectorAll('[tabindex="0"].hole, .mark[tabindex="0"]')) stop.tabIndex = -1;
  focusOf(part).tabIndex = 0;
}

/** Scrolls what scrolls around a part, and not the page, so that the part is seen. */
function showWithin(part) {
  const sheet = part.closest('.sheet'), box = part.getBoundingClientRect(), frame = sheet.getBoundingClientRect();
  const head = isRow(part) ? part.closest('table').tHead.offsetHeight : 0;
  if (box.top < frame.top + head || box.bottom > frame.bottom)
    sheet.scrollTop += box.top - frame.top - (frame.height + head - box.height) / 2;
  if (!isRow(part) && (box.left < frame.left || box.right > frame.right))
    sheet.scrollLeft += box.left - frame.left - frame.width / 2;
}

function sectionTexts(hole) {
  return {gapTop: hole.drawn[0], gapLow: hole.drawn[2], gapBit: cellText(hole, 'gap'),
    edgeTop: cellText(hole, 'edge top'), edgeLow: cellText(hole, 'edge low'), stack: cellText(hole, 'stack'),
    fastener: hole.fastener};
}

function valueRow(column, text) {
  const row = document.createElement('tr'), head = document.createElement('th'), cell = document.createElement('td');
  head.scope = 'row';
  head.append(column.unit ? `${column.name}, ${column.unit}` : column.name);
  const what = document.createElement('span');
  what.textContent = column.what;
  head.append(' ', what);
  cell.textContent = text;
  row.append(head, cell);
  return row;
}

function fillPanel(hole) {
  byId('hole').classList.add('open');
  byId('hole-open').hidden = false;
  byId('hole-name').textContent = `${hole.mark}, ${hole.side}`;
  byId('hole-because').textContent = `Why here: ${wordsOf(hole, 'because')}.`;
  byId('hole-note').textContent = wordsOf(hole, 'note');
  byId('hole-drawn').textContent = `Gap by the drawing, ${page.unit}: hull top ${hole.drawn[0]}, middle ` +
    `${hole.drawn[1]}, low edge ${hole.drawn[2]}.` + (page.window ? ` Window ${page.window_text}.` : '');
  byId('section').replaceChildren(drawSection(hole, sectionTexts(hole)));
  const keepout = {name: 'keep-out', unit: page.unit, what: 'the nearest, from the hole along the drill line'};
  byId('hole-values').replaceChildren(
    ...columns.slice(2).map((column, i) => valueRow(column, hole.cells[i + 2].textContent)),
    valueRow(keepout, wordsOf(hole, 'keep-out') || 'none'));
  byId('bar-words').textContent = `${hole.mark}, ${hole.side}, girth ${cellText(hole, 'girth')} ${page.unit} on the ` +
    `drill line, jig ${cellText(hole, 'jig')}: ${wordsOf(hole, 'because')}`;
}

/** Chooses a hole everywhere; `from` is the part it was chosen in, which is not scrolled. */
function choose(mark, from) {
  const before = holes.get(chosen), hole = holes.get(mark);
  if (!hole) return;
  const mend = (which, on) => {
    for (const part of which.parts) {
      part.classList.toggle('chosen', on);
      const named = focusOf(part);
      named.setAttribute(named.tagName === 'BUTTON' ? 'aria-pressed' : 'aria-selected', String(on));
    }
  };
  if (before) mend(before, false);
  mend(hole, true);
  chosen = mark;
  for (const part of hole.parts) {
    setStop(part);
    if (part !== from) showWithin(part);
  }
  fillPanel(hole);
  history.replaceState(null, '', `#${mark}`);
  document.dispatchEvent(new CustomEvent('chosen', {detail: hole}));
}

/** The hole `step` after the chosen one in the order of the schedule. */
function chooseBeside(step) {
  const marks = [...holes.keys()];
  const at = chosen === null ? (step > 0 ? -1 : 0) : holes.get(chosen).index;
  choose(marks[(at + step + marks.length) % marks.length], null);
}

function shownParts(group) {
  return [...group.querySelectorAll('.hole[data-mark]')].filter((part) => !part.hidden);
}

/** Where a key takes the focus among the parts of a group; null if nowhere. */
function partByKey(key, parts, at) {
  const steps = {ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1, PageDown: 10, PageUp: -10};
  if (key === 'Home') return parts[0];
  if (key === 'End') return parts[parts.length - 1];
  if (!(key in steps)) return null;
  return parts[Math.min(Math.max(at + steps[key], 0), parts.length - 1)];
}

function onKey(event) {
  const part = event.target.closest('.hole[data-mark]');
  if (!part || event.ctrlKey || event.altKey || event.metaKey || event.target.type === 'checkbox') return;
  if (event.key === 'Enter') {
    choose(part.dataset.mark, part);
  } else if (event.key === ' ') {
    document.dispatchEvent(new CustomEvent('tick', {detail: part.dataset.mark}));
  } else {
    const parts = shownParts(part.closest('.roving'));
    const next = partByKey(event.key, parts, parts.indexOf(part));
    if (!next) return;
    setStop(next);
    focusOf(next).focus({preventScroll: isRow(next)});
    showWithin(next);
  }
  event.preventDefault();
}

for (const group of document.querySelectorAll('.roving')) {
  const parts = shownParts(group);
  if (parts.length > 0) focusOf(parts[0]).tabIndex = 0;
  group.addEventListener('keydown', onKey);
  group.addEventListener('click', (event) => {
    const part = event.target.closest('.hole[data-mark]');
    if (!part || event.target.type === 'checkbox') return;
    choose(part.dataset.mark, part);
    focusOf(part).focus({preventScroll: true});
  });
}
for (const button of document.querySelectorAll('[data-step]'))
  button.addEventListener('click', () => chooseBeside(Number(button.dataset.step)));
