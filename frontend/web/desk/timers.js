import { Refused, put } from '../core/http.js';
import { newId } from '../core/ids.js';
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';

const MORE_MINUTES = 5;
const MINUTES = ['5', '10', '15', '30', '45'];
const LONGEST_MINUTES = 480;

let freshId = newId();
let whom = '';

/** Timers for the class, one team or one cell: what runs, five minutes more, and a form for the next. */
export function timers({ day, teams, cells, lesson }, { reload }) {
  return html`<section class="flow" aria-labelledby="timers"><h2 id="timers">${t('page.lesson.timers')}</h2>
    ${lesson.timers.length ? html`<ul class="bare timers">${lesson.timers.map(timer => row(timer, teams, cells, reload))}</ul>`
      : html`<p class="soft">${t('page.lesson.noTimer')}</p>`}
    <div class="narrow"><bw-form class="timer-form" .label=${t('page.lesson.startTimer')} .send=${values => start(day, values, cells, reload)} .fields=${html`
      <bw-field name="words" maxlength="60" .label=${t('page.lesson.whatFor')}></bw-field>
      <bw-field name="durationS" maxlength="3" .label=${t('page.lesson.minutesField')}></bw-field>
      <p class="beside">${MINUTES.map(each => html`<button type="button" class="button quiet" @click=${fill} value=${each}>${t('page.lesson.minutes', { minutes: Number(each) })}</button>`)}</p>
      <bw-picker .label=${t('page.lesson.forWhom')} always .value=${whom} @chosen=${event => { whom = event.detail; }}
        .options=${[{ key: '', label: t('page.lesson.wholeClass') }, ...scopes(teams, cells)]}></bw-picker>`}></bw-form></div>
  </section>`;
}

function row(timer, teams, cells, reload) {
  const team = teams.find(({ id }) => id === timer.teamId);
  const cell = cells.find(({ id }) => id === timer.cellId);
  const scope = team ? html`<bw-mark .mark=${team.mark}></bw-mark> ${[cell?.label, team.name].filter(Boolean).join(' ')}` : t('page.lesson.wholeClass');
  return html`<li><div><bw-countdown .until=${timer.endsAt} .label=${timer.words}></bw-countdown><br><span class="soft small">${scope}</span></div>
    <div class="beside">
      <button class="button quiet" aria-label=${t('page.lesson.moreFor', { words: timer.words })} @click=${() => extend(timer, reload)}>${t('page.lesson.more', { minutes: MORE_MINUTES })}</button>
      <button class="button quiet" aria-label=${t('page.lesson.stopFor', { words: timer.words })} @click=${() => stop(timer, reload)}>${t('page.lesson.stop')}</button>
    </div></li>`;
}

/** Each team followed by its cells, as choices. */
export const scopes = (teams, cells) => teams.flatMap(team => [
  { key: team.id, label: team.name },
  ...cells.filter(({ teamId }) => teamId === team.id).map(({ id, label }) => ({ key: id, label: t('page.lesson.cellOf', { label, team: team.name }) })),
]);

function fill(event) {
  const field = event.target.closest('bw-form').querySelector('[name="durationS"]');
  field.value = event.target.closest('button').value;
}

/** Whole minutes as typed, in seconds; refused at the field when they are none. */
export function secondsOf(typed) {
  const minutes = Number(typed.trim());
  if (Number.isInteger(minutes) && minutes >= 1 && minutes <= LONGEST_MINUTES) return minutes * 60;
  throw new Refused(422, { detail: t('page.lesson.minutesWrong'), field: 'durationS' });
}

async function start(day, { words, durationS }, cells, reload) {
  const ofCell = cells.some(({ id }) => id === whom);
  await put(`/api/timers/${freshId}`, { labDayId: day.id, words, durationS: secondsOf(durationS), teamId: ofCell ? null : whom || null, cellId: ofCell ? whom : null });
  freshId = newId();
  document.querySelectorAll('bw-form.timer-form bw-field').forEach(field => { field.value = ''; });
  await reload();
}

async function extend({ id }, reload) {
  await tried(put(`/api/timers/${id}/extensions/${newId()}`, { minutes: MORE_MINUTES }), reload);
}

async function stop({ id }, reload) {
  await tried(put(`/api/timers/${id}/end`), reload);
}

/** The reload shows how the timer stands, or that nobody answers. */
const tried = (sent, reload) => sent.catch(() => {}).then(reload);
