/** Whether a team may begin in the zones that a step needs. */
import { clock } from '../core/format.js';
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { standingOf } from './standing.js';

/** @param zones keys of the zones that need a sign-off; `signOffs` as the server gives them; `now` in ms */
export function zoneState(zones, signOffs, teamId, now) {
  const standings = zones.map(zone => ({ zone, ...standingOf(signOffs, teamId, zone, now) }));
  const open = standings.filter(each => each.state !== 'valid');
  return html`<div role="status" class="zones">
    ${standings.filter(each => each.state === 'valid').map(signed)}
    ${open.length ? html`<p class="zone open"><bw-icon name="adult"></bw-icon>
      <span>${t('page.safety.askTeacher', { zone: open.map(name).join(', ') })} ${open.map(past)}</span></p>` : nothing}</div>`;
}

const name = ({ zone }) => t(`catalogue.zone.${zone}`);

const signed = standing => html`<p class="zone valid"><bw-icon name="fine"></bw-icon>
  <span>${t('page.safety.signedUntil', { zone: name(standing), time: clock(standing.until) })}</span></p>`;

const past = standing => (standing.state === 'none' ? nothing
  : t(`page.safety.over.${standing.state}`, { time: clock(standing.until) }));
