import { calm } from '../charts/calm.js';

const GLIDE_MS = 280;
const AGLOW_MS = 8_000;

/**
 * Lets `change` redraw the rows, moves each one from where it stood to where it now stands, and lets a bar fade
 * slowly before those whose figure is new.
 */
export function glide(main, change) {
  const before = new Map(rowsOf(main).map(row => [row.dataset.team, { top: topOf(row), value: row.dataset.value }]));
  change();
  if (calm()) return;
  for (const row of rowsOf(main)) {
    const earlier = before.get(row.dataset.team);
    if (!earlier) continue;
    move(row, earlier.top - topOf(row));
    if (earlier.value !== row.dataset.value) glow(row);
  }
}

function move(row, distance) {
  if (Math.abs(distance) < 1) return;
  row.animate([{ transform: `translateY(${distance}px)` }, { transform: 'none' }], { duration: GLIDE_MS, easing: 'ease-in-out' });
}

function glow(row) {
  const bar = colour => ({ boxShadow: `-0.45rem 0 0 0 ${colour}` });
  row.animate([bar('var(--iodine)'), bar('transparent')], { duration: AGLOW_MS, easing: 'ease-in' });
}

const rowsOf = main => [...main.querySelectorAll('tr[data-team]')];

const topOf = row => row.getBoundingClientRect().top;
