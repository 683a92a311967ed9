import { remark, t } from '../core/texts.js';
import { html } from '../kit/kit.js';

const BEING_BUILT = 'standing.building';

/** What keeps finished cells from counting, one line per reason with the cells that share it, the commonest first. */
export function waitingList({ teams, cells }, standings) {
  const reasons = reasonsOf(teams, cells, standings);
  return html`<section class="flow"><h2>${t('page.desk.waiting')}</h2>
    ${reasons.length === 0 ? html`<p class="soft">${t('page.desk.nothingWaits')}</p>` : html`
    <ul class="bare reasons">${reasons.map(({ sentence, cells: those }) => html`<li class="slide">
      <div class="label">${those.length}</div>
      <div class="body"><p>${sentence}</p>
        <p class="soft">${those.map(({ cell, team }) => html`<span class="who"><bw-mark .mark=${team.mark}></bw-mark> ${cell.label} ${team.name}</span>`)}</p></div>
    </li>`)}</ul>`}
  </section>`;
}

function reasonsOf(teams, cells, standings) {
  const bySentence = new Map();
  for (const cell of cells) {
    const standing = standings.get(cell.id);
    if (standing?.standing !== 'waiting' || !standing.remark || standing.remark.key === BEING_BUILT) continue;
    const sentence = remark(standing.remark);
    const team = teams.find(({ id }) => id === cell.teamId) ?? { name: '' };
    bySentence.set(sentence, [...(bySentence.get(sentence) ?? []), { cell, team }]);
  }
  return [...bySentence].map(([sentence, those]) => ({ sentence, cells: those })).sort((a, b) => b.cells.length - a.cells.length);
}
