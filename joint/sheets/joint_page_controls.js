'use strict';
// The hull's record in the page, to and from a file, and the size of the plan.

let hull = '', record = emptyRecord();

function say(text, wrong) {
  byId('message').textContent = text;
  byId('message').classList.toggle('wrong', Boolean(wrong));
}

function hullName(name) { return name === '' ? 'the hull without a number' : `hull ${name}`; }

function showHole(hole) {
  const drilled = Boolean(record.drilled[hole.mark]);
  for (const part of hole.parts) part.classList.toggle('drilled', drilled);
  for (const [part, name] of hole.names) {
    part.setAttribute('aria-checked', String(drilled));
    part.setAttribute('aria-label', name + (drilled ? ', drilled' : ''));
  }
  hole.row.querySelector('input').checked = drilled;
  const read = readingText(hole);
  hole.row.querySelector('.read').textContent = read === '' ? '' : `; ${read}`;
  if (hole.mark !== chosen) return;
  byId('hole-drilled').checked = byId('bar-drilled').checked = drilled;
}

/** Puts the hull and the count on the foot of each printed page. */
function printedOn(count) {
  const text = `hull number ${hull === '' ? '________________' : hull}: ${count}`;
  const quoted = text.replace(/[^\p{L}\p{N} :,_.-]/gu, (letter) => `\\${letter.codePointAt(0).toString(16)} `);
  byId('paper-hull').textContent = `@page { @bottom-center { content: "${quoted}"; font: 7.5pt sans-serif; } }`;
}

function showCount() {
  const drilled = Object.keys(record.drilled).length, read = Object.keys(record.read).length;
  const drafts = Object.keys(record.drafts).length;
  const count = `${drilled} of ${holes.size} drilled, gaps read at ${read}`;
  byId('hull-count').textContent = count + (drafts > 0 ? `; typed and not kept at ${drafts}` : '');
  printedOn(count);
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
  const word = leaveReading();
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
  say((word === '' ? '' : word + ' ') +
    (carried ? `What was ticked so far is now of ${hullName(hull)}.` : `This is ${hullName(hull)}.`));
}

// to and from a file

function save() {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([recordFile(hull, record)], {type: 'text/csv'}));
  link.download = `readings-${hull === '' ? 'no-number' : hull.replace(/[^\p{L}\p{N}.-]+/gu, '-')}.csv`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10000);
  say(`Saved as ${link.download}.` + (Object.keys(record.drafts).length > 0
    ? ' What was typed and not kept is not in it.' : ''));
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
    turnReading();
    showHole(event.detail);
    filterRows();
  });
  byId('schedule-table').addEventListener('change', (event) =>
    tick(event.target.closest('.hole').dataset.mark, event.target.checked));
  for (const id of ['hole-drilled', 'bar-drilled'])
    byId(id).addEventListener('change', (event) => tick(chosen, event.target.checked));
  byId('hull-number').addEventListener('change', (event) => changeHull(event.target.value.trim()));
  startReading();
  startFilter();
  byId('save').addEventListener('click', save);
  byId('load').addEventListener('change', load);
  byId('clear').addEventListener('click', clear);
  byId('clear').addEventListener('blur', calm);
  byId('print').addEventListener('click', () => window.print());
  byId('all-columns').addEventListener('click', (event) => {
    const all = byId('schedule-table').classList.toggle('all');
    event.currentTarget.setAttribute('aria-pressed', String(all));
  });
  for (const button of document.querySelectorAll('[data-zoom]'))
    button.addEventListener('click', () => zoom(button.dataset.zoom));
  window.addEventListener('storage', () => {
    record = loadRecord(hull);
    draftReading();
    showRecord();
  });
  showRecord();
  greet();
  if (byId('plan-sheet').clientWidth < 700) zoom('4');
  choose(decodeURIComponent(location.hash.slice(1)), null);
  if (chosen === null) showWithin([...holes.values()][0].parts[0]);
}

start();
