import { put } from '../core/http.js';
import { newId } from '../core/ids.js';
import { t } from '../core/texts.js';
import { html } from '../kit/kit.js';
import { showCode } from './code.js';
import './team-edit.js';

let freshId = newId();

/** The teams with their codes and what may be changed about them, and a line to make another one. */
export function teamShelf({ day, teams }, { reload }) {
  return html`<section class="flow"><h2>${t('page.desk.teams')}</h2>
    <ul class="bare shelf">${teams.map(team => html`<li class="slide"><div class="label"><bw-mark .mark=${team.mark}></bw-mark></div>
      <div class="body"><div class="apart"><div><strong>${team.name}</strong><br><span class="letters">${team.code}</span></div>
        <button class="button quiet" aria-label=${t('page.desk.showTeam', { name: team.name })} @click=${() => project(team)}>${t('page.desk.show')}</button></div>
        <bw-team-edit .team=${team} .others=${teams.filter(({ id }) => id !== team.id)} @changed=${reload}></bw-team-edit></div></li>`)}</ul>
    <div class="narrow"><bw-form .label=${t('page.desk.makeTeam')} .send=${values => makeTeam(day, values, reload)} .fields=${html`
      <bw-field name="name" maxlength="24" .label=${t('page.desk.teamName')} .hint=${t('page.desk.teamNameHint')}></bw-field>`}></bw-form></div>
  </section>`;
}

/** Shows a team's code for its phones. */
export function project(team) {
  showCode({ title: team.name, code: team.code, picture: `/api/teams/${team.id}/link.svg` });
}

async function makeTeam(day, { name }, reload) {
  await put(`/api/teams/${freshId}`, { labDayId: day.id, code: null, name: name.trim() });
  freshId = newId();
  document.querySelector('.desk .shelf ~ .narrow bw-field[name="name"]').value = '';
  await reload();
}
