'use strict';
// The filters of the schedule, and what its search finds: a mark from its start, a fastener
// by its length, the holes nearest to a girth, and words from their start.

function plainText(text) {
  return text.toLowerCase().replaceAll('×', 'x').replace(/[’`]/g, "'").replace(/\s+/g, ' ').trim();
}

/** A length as typed, "2926", "12,5" or "48-5/8"; NaN if it is none. */
function typedLength(text) {
  const parts = /^(?:(\d+(?:[.,]\d+)?|\.\d+))?(?:(?:^|-| )(\d+)\/([1-9]\d*))?$/.exec(text);
  if (!parts || text === '') return NaN;
  return Number((parts[1] ?? '0').replace(',', '.')) + (parts[2] ? parts[2] / parts[3] : 0);
}

/** The cells that are searched by words. */
function searchedCells(hole) {
  return [hole.fastener, hole.side, hole.row.dataset.jigs, ...hole.cells.slice(2).map((cell) => cell.textContent),
    ...['because', 'keep-out', 'note', 'read'].map((kind) => wordsOf(hole, kind))].map(plainText);
}

/** Whether a cell has the text from the start of a word, and no digit more after it. */
function startsInCell(cell, text) {
  for (let at = cell.indexOf(text); at >= 0; at = cell.indexOf(text, at + 1)) {
    const cut = /\d$/.test(text) && /^[.,]?\d/.test(cell.slice(at + text.length));
    if (!cut && (at === 0 || /[\s(;:,/“"+]/.test(cell[at - 1]))) return true;
  }
  return false;
}

function byLength(text, among) {
  const typed = typedLength(text);
  const found = among.filter((hole) => hole.length !== '' && (plainText(hole.length) === text ||
    typedLength(plainText(hole.length).replace(/ (mm|in)$/, '')) === typed));
  return {found, says: `by a fastener’s length of ${text}`};
}

/** On each side that is so long, the hole nearest to a girth on the drill line; two if both are. */
function byGirth(girth, among) {
  const found = [];
  for (const [side, length] of Object.entries(page.sides)) {
    const here = among.filter((hole) => hole.side === side);
    if (here.length === 0 || girth * page.unit_mm > length + 0.5) continue;
    const away = (hole) => Math.abs(hole.girth - girth * page.unit_mm);
    const least = Math.min(...here.map(away));
    found.push(...here.filter((hole) => away(hole) < least + 1e-3));
  }
  if (found.length === 0) return {found, says: `no side shown is ${girth} ${page.unit} long on the drill line`};
  return {found, says: `nearest to girth ${girth} ${page.unit} on the drill line: ` +
    found.map((hole) => `${hole.mark} at ${cellText(hole, 'girth')}`).join(', ')};
}

/** The holes that a search finds among some, and in words how it found them. */
function search(typed, among) {
  const text = plainText(typed);
  if (text === '') return {found: among, says: ''};
  const marked = among.filter((hole) => plainText(hole.mark).startsWith(text));
  if (marked.length > 0) return {found: marked, says: ''};
  const crossed = /^x ?(?=\d)/.test(text), bare = text.replace(/^x ?(?=\d)/, '').replace(/ ?(mm|in)$/, '');
  if (isNaN(typedLength(bare)))
    return {found: among.filter((hole) => searchedCells(hole).some((cell) => startsInCell(cell, text))), says: ''};
  const lengths = byLength(bare, among);
  if (lengths.found.length > 0 || crossed) return lengths;
  return byGirth(typedLength(bare), among);
}

function filterRows() {
  const side = byId('filter-side').value, jig = byId('filter-jig').value;
  const length = byId('filter-length')?.value ?? '';
  const flagged = byId('filter-flagged').checked, open = byId('filter-open').checked;
  const among = [...holes.values()].filter((hole) => (side === '' || hole.side === side) &&
    (jig === '' || hole.row.dataset.jigs.split(' ').includes(jig)) && (length === '' || hole.length === length) &&
    (!flagged || 'flagged' in hole.row.dataset) && (!open || !record.drilled[hole.mark]));
  const {found, says} = search(byId('filter-text').value, among);
  const fits = new Set(found);
  for (const hole of holes.values()) {
    for (const part of hole.parts) {
      part.classList.toggle('aside', !fits.has(hole));
      if (isRow(part)) part.hidden = !fits.has(hole);
    }
  }
  const lost = chosen !== null && holes.get(chosen).row.hidden ? `; ${chosen}, the chosen one, is not among them` : '';
  byId('filter-count').textContent = `${fits.size} of ${holes.size} holes shown${says === '' ? '' : `, ${says}`}${lost}`;
  for (const table of document.querySelectorAll('table.roving')) {
    const rows = shownParts(table);
    if (rows.length > 0 && !rows.some((row) => focusOf(row).tabIndex === 0)) setStop(rows[0]);
  }
}

function startFilter() {
  byId('filter').addEventListener('input', filterRows);
  byId('filter').addEventListener('submit', (event) => event.preventDefault());
  byId('filter').addEventListener('reset', () => setTimeout(filterRows));
}
