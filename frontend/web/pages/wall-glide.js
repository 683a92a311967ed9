import { calm } from '../charts/calm.js';

const GLIDE_MS = 280;

/** Lets `change` redraw the rows and moves each one from where it stood to where it now stands. */
export function glide(main, change) {
  const before = tops(main);
  change();
  if (calm()) return;
  for (const [team, row] of rowsOf(main)) {
    const moved = (before.get(team) ?? NaN) - row.getBoundingClientRect().top;
    if (Math.abs(moved) > 1) {
      row.animate([{ transform: `translateY(${moved}px)` }, { transform: 'none' }], { duration: GLIDE_MS, easing: 'ease-in-out' });
    }
  }
}

const rowsOf = main => [...main.querySelectorAll('tr[data-team]')].map(row => [row.dataset.team, row]);

const tops = main => new Map(rowsOf(main).map(([team, row]) => [team, row.getBoundingClientRect().top]));
