'use strict';
// What is ticked off and measured on one hull: kept by the browser, written to a file and
// read from it. A record is {drilled: {mark: true}, read: {mark: {state: {top, low}}}, drafts}, drafts
// as read, of what was typed and is no reading; they are not in the file;
// readings are texts in the page's unit, in the file they are in mm.

const page = JSON.parse(document.getElementById('page-data').textContent);
const states = ['dry', 'held', 'after'];
const fileColumns = ['side', 'girth', 'mark', 'gap_top', 'gap_low', 'state', 'drilled', 'hull',
  'layout', 'boat'];
const widestGapMm = 100;

function emptyRecord() { return {drilled: {}, read: {}, drafts: {}}; }

/** The name under which a hull's record is kept; boats, layouts and hulls never meet. */
function recordKey(hull) { return JSON.stringify(['sheerlap', page.title, page.layout, hull]); }

/** What the browser keeps; empty if it keeps nothing. */
function store() {
  try {
    return window.localStorage;
  } catch (refused) {
    return null;
  }
}

function loadRecord(hull) {
  try {
    const kept = JSON.parse(store().getItem(recordKey(hull)));
    return {...emptyRecord(), ...kept};
  } catch (unreadable) {
    return emptyRecord();
  }
}

function isEmpty(record) {
  return Object.values(record).every((part) => Object.keys(part).length === 0);
}

/** Keeps a record; an empty one is forgotten. False if the browser refuses. */
function keepRecord(hull, record) {
  try {
    if (isEmpty(record)) store().removeItem(recordKey(hull));
    else store().setItem(recordKey(hull), JSON.stringify(record));
    return true;
  } catch (refused) {
    return false;
  }
}

/** The hulls that are kept of this layout, and how many records of this boat's others. */
function keptHulls() {
  const kept = {here: [], elsewhere: 0};
  const names = store();
  for (let i = 0; names && i < names.length; ++i) {
    let key;
    try {
      key = JSON.parse(names.key(i));
    } catch (foreign) {
      continue;
    }
    if (!Array.isArray(key) || key[0] !== 'sheerlap' || key[1] !== page.title) continue;
    if (key[2] === page.layout) kept.here.push(key[3]);
    else kept.elsewhere += 1;
  }
  kept.here.sort();
  return kept;
}

/** A gap as typed, in `unitMm`: its text with a point, or why it is refused. Touching parts are 0,
    and less than 0 by how much they are in each other's way. */
function readGap(text, unitMm) {
  const typed = text.trim().replace(',', '.').replace(/^[−–]/, '-').replace(/^touch(es|ing)?$/i, '0');
  if (typed === '') return {gap: ''};
  const parts = /^(-?\d+)\/([1-9]\d*)$/.exec(typed);
  const gap = parts ? String(+(parts[1] / parts[2]).toFixed(4)) : typed;
  if (!/^-?(\d+\.?\d*|\.\d+)$/.test(gap))
    return {wrong: `“${text.trim()}” is not a gap: type a number such as 2.5, or 0 where the parts touch`};
  if (Math.abs(gap) * unitMm > widestGapMm)
    return {wrong: `${text.trim()} is too much for a gap or an interference: at most ${widestGapMm} mm`};
  return {gap: String(Number(gap) + 0)};
}

function inMm(gap) { return gap === '' ? '' : String(+(gap * page.unit_mm).toFixed(4)); }
function fromMm(gap) { return gap === '' ? '' : String(+(gap / page.unit_mm).toFixed(4)); }

function field(text) {
  return /[",;\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** A hull's record as comma-separated values (RFC 4180), lengths in mm. */
function recordFile(hull, record) {
  const lines = [fileColumns];
  for (const hole of page.holes) {
    const read = record.read[hole.mark] ?? {};
    const drilled = record.drilled[hole.mark] ? 'yes' : 'no';
    const taken = states.filter((state) => read[state]);
    const line = (top, low, state) => lines.push([hole.side, String(hole.girth), hole.mark, top, low,
      state, drilled, hull, page.layout, page.title]);
    for (const state of taken) line(inMm(read[state].top), inMm(read[state].low), state);
    if (taken.length === 0 && drilled === 'yes') line('', '', '');
  }
  return lines.map((line) => line.map(field).join(',') + '\r\n').join('');
}

/** The records of comma- or semicolon-separated values. */
function separated(text) {
  const plain = text.replace(/^\uFEFF/, '');
  const first = plain.split('\n', 1)[0];
  const comma = first.includes(';') && !first.includes(',') ? ';' : ',';
  const records = [];
  let record = [], cell = '', quoted = false;
  const endCell = () => { record.push(cell); cell = ''; };
  const endRecord = () => {
    endCell();
    records.push(record);
    record = [];
  };
  for (let i = 0; i < plain.length; ++i) {
    const letter = plain[i];
    if (quoted && letter === '"' && plain[i + 1] === '"') { cell += '"'; ++i; }
    else if (letter === '"') quoted = !quoted;
    else if (quoted) cell += letter;
    else if (letter === comma) endCell();
    else if (letter === '\n') endRecord();
    else if (letter !== '\r') cell += letter;
  }
  if (cell !== '' || record.length > 0) endRecord();
  return records;
}

/** Takes one line of a file into a record; gives what is wrong with it, or nothing. */
function takeLine(line, holes, found) {
  const hole = holes.get(line.mark);
  if (!hole) return `there is no hole “${line.mark}” in this layout`;
  if (line.side !== hole.side) return `${line.mark} is on ${hole.side}, not “${line.side}”`;
  if (line.girth !== '' && !(Math.abs(Number(line.girth.replace(',', '.')) - hole.girth) <= 1))
    return `${line.mark} stands at girth ${hole.girth} mm, not “${line.girth}”`;
  if (!['', 'yes', 'no'].includes(line.drilled))
    return `drilled is to be yes or no, not “${line.drilled}”`;
  const top = readGap(line.gap_top, 1), low = readGap(line.gap_low, 1);
  if (top.wrong || low.wrong) return top.wrong ?? low.wrong;
  if (line.drilled === 'yes') found.record.drilled[hole.mark] = true;
  if (top.gap === '' && low.gap === '') return null;
  if (!states.includes(line.state))
    return `the state is to be ${states.join(', ')}, not “${line.state}”`;
  found.record.read[hole.mark] ??= {};
  found.record.read[hole.mark][line.state] = {top: fromMm(top.gap), low: fromMm(low.gap)};
  found.readings += 1;
  return null;
}

/** What a file holds: {hull, record, readings}, or {wrong: [what is wrong with it]}. */
function readRecordFile(text) {
  const [heads, ...lines] = separated(text);
  const needed = ['side', 'girth', 'mark', 'gap_top', 'gap_low', 'state'];
  const lacking = needed.filter((name) => !(heads ?? []).includes(name));
  if (lacking.length > 0)
    return {wrong: [`This is not a file of readings: its first line has no ${lacking.join(', ')}.`]};
  const holes = new Map(page.holes.map((hole) => [hole.mark, hole]));
  const found = {hull: null, record: emptyRecord(), readings: 0}, wrong = [];
  lines.forEach((cells, i) => {
    if (cells.every((cell) => cell.trim() === '')) return;
    const line = Object.fromEntries(fileColumns.map((name) =>
      [name, (cells[heads.indexOf(name)] ?? '').trim()]));
    let fault = null;
    if (line.boat !== '' && line.boat !== page.title.trim()) fault = `it is of another boat, “${line.boat}”`;
    else if (line.layout !== '' && line.layout !== page.layout)
      fault = 'it is of another layout of the holes: open the page it was saved from';
    else if (found.hull !== null && line.hull !== found.hull) fault = 'it is of a second hull';
    else fault = takeLine(line, holes, found);
    found.hull = line.hull;
    if (fault) wrong.push(`Line ${i + 2}: ${fault}.`);
  });
  if (wrong.length > 0)
    return {wrong: [...wrong.slice(0, 5), ...(wrong.length > 5 ? [`And ${wrong.length - 5} lines more.`] : [])]};
  return found;
}
