import { fixed } from '../core/format.js';
import { shown } from '../core/ranked.js';
import { t } from '../core/texts.js';
import { html, nothing, repeat } from '../kit/element.js';
import '../kit/mark.js';
import { placeOf } from '../core/place.js';
import { commonDecimals } from './decimals.js';
import { legend } from './legend.js';
import { tieOf } from './ties.js';
import { whyNot } from './why.js';

/** The rows of one page: a table whose third column is a picture that lies over all its rows. */
export function wallBoard(state, teams, { join, moves }) {
  if (!state) return html`<section class="board"></section>`;
  if (teams.length === 0) return invitation(join);
  const decimals = commonDecimals(state.teams);
  return html`<section class="board">
    <table role="table">
      <thead role="rowgroup"><tr role="row">
        <th role="columnheader" scope="col">${t('page.wall.place')}</th>
        <th role="columnheader" scope="col">${t('page.wall.team')}</th>
        <td role="cell">${legend()}</td>
        <th role="columnheader" scope="col" class="number">${t(`page.wall.unit.${state.metric}`)}</th>
      </tr></thead>
      <tbody role="rowgroup">${repeat(teams, team => team.teamId, (team, at) => row(team, { decimals, move: moves.get(team.teamId), tie: tieOf(teams, at) }))}</tbody>
    </table>
    <div class="plot"><div><canvas></canvas></div></div>
  </section>`;
}

function row(team, { decimals, move, tie }) {
  return html`<tr role="row" class=${tie.words} data-team=${team.teamId} data-value=${team.figure?.value ?? ''}>
    <td role="cell" class="place">${placeOf(team) ?? html`<span class="none" aria-label=${t('page.wall.noPlace')}>·</span>`}
      ${tie.size ? html`<span class="tie" data-group=${tie.size}>${t('page.wall.shared')}</span>` : nothing}
      ${move ? html`<span class="moved">${t('page.wall.was', { place: move.from })}</span>` : nothing}</td>
    <th role="rowheader" scope="row" class="team">
      <span class="name"><bw-mark .mark=${team.mark}></bw-mark><span>${team.name}</span></span>
      <span class="why">${whyNot(team)}</span>
    </th>
    <td role="cell" class="strip"></td>
    <td role="cell" class="number">${team.figure ? amount(team.figure, decimals) : html`<span class="none">${t('page.wall.noResult')}</span>`}</td>
  </tr>`;
}

function amount(figure, decimals) {
  const { value, low, high } = shown(figure);
  const text = number => fixed(number, decimals);
  return html`<span class="value">${text(value)}</span>
    <span class="interval">${t('page.wall.interval', { low: text(low), high: text(high) })}</span>`;
}

function invitation(join) {
  if (!join) return html`<section class="board"></section>`;
  const { code, address, picture } = join;
  return html`<section class="board invitation">
    ${code ? html`<img src=${picture} alt=${t('page.wall.joinPicture')} @error=${event => { event.target.hidden = true; }}>` : nothing}
    <div><p class="big">${t('page.wall.noTeam')}</p><p class="big address">${address}</p>
      ${code ? html`<p class="big">${t('page.wall.code')} <strong>${code}</strong></p>` : nothing}</div>
  </section>`;
}
