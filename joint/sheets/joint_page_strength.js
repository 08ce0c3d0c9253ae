'use strict';
// The table of the fasteners' use, in the order of the schedule or the worst first.

function orderByUse(worstFirst) {
  const body = byId('use-table').tBodies[0];
  const index = (row) => holes.get(row.dataset.mark).index;
  body.append(...[...body.rows].sort((a, b) =>
    worstFirst && b.dataset.use - a.dataset.use || index(a) - index(b)));
}

byId('use-order')?.addEventListener('click', (event) => {
  const worstFirst = event.currentTarget.getAttribute('aria-pressed') !== 'true';
  event.currentTarget.setAttribute('aria-pressed', String(worstFirst));
  orderByUse(worstFirst);
});
