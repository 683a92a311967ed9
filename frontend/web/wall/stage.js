import { html } from '../kit/element.js';
import { besideBoards } from './beside.js';
import { wallBoard } from './board.js';
import { waitingBoard } from './waiting.js';

/** What stands between head and foot: one leaf on a projector, all of them one below the other on a phone. */
export function stage(state, leaves, { join, moves }) {
  return html`<div class="stage">${leaves.map(({ kind, teams, cells }) => {
    if (kind === 'beside') return besideBoards(teams, state.metric);
    return kind === 'waiting' ? waitingBoard(cells) : wallBoard(state, teams, { join, moves });
  })}</div>`;
}
