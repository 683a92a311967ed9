/** Who is signed off for which hazard zone: a table of teams by zones, each place a button. */
import { clock } from '../core/format.js';
import { t } from '../core/texts.js';
import { PageElement, html, nothing } from '../kit/kit.js';
import { minutesLeft, standingOf } from '../safety/standing.js';
import { safetyWatch } from '../safety/watch.js';
import './briefing.js';

const ENDING_MIN = 10;

/** `desk` as the Desk loads it: day and teams. */
class SignOffs extends PageElement {
  static properties = { desk: { attribute: false }, every: { state: true }, asked: { state: true } };

  connectedCallback() {
    super.connectedCallback();
    this.end = safetyWatch.start(this.desk.day.id, () => this.requestUpdate());
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    this.end();
  }

  render() {
    const { catalogue } = safetyWatch;
    if (!catalogue) return nothing;
    if (!this.desk.teams.length) return html`<section class="flow"><h2>${t('page.safety.signOffs')}</h2><p class="soft">${t('page.safety.noTeamYet')}</p></section>`;
    const zones = catalogue.zones.filter(zone => this.every || zone.gated || this.#used(zone));
    return html`<section class="flow"><h2>${t('page.safety.signOffs')}</h2>
      <p class="soft">${t('page.safety.signOffsLead')}</p>
      <div class="sign-offs" tabindex="0" role="group" aria-label=${t('page.safety.signOffs')}><table>
        <thead><tr><th scope="col">${t('page.desk.team')}</th>${zones.map(zone => html`<th scope="col">${zoneName(zone)}</th>`)}</tr></thead>
        <tbody>${this.desk.teams.map(team => this.#row(team, zones))}
          ${this.desk.teams.length > 1 ? html`<tr><th scope="row">${t('page.safety.allTeams')}</th>${zones.map(zone => html`<td>${this.#forAll(zone)}</td>`)}</tr>` : nothing}</tbody></table></div>
      ${zones.length < catalogue.zones.length || this.every ? html`<button class="button plain" aria-pressed=${this.every ? 'true' : 'false'}
        @click=${() => { this.every = !this.every; }}>${t(this.every ? 'page.safety.fewerZones' : 'page.safety.everyZone')}</button>` : nothing}
      <bw-briefing .dayId=${this.desk.day.id} .asked=${this.asked ?? null} @closed=${() => { this.asked = null; }}></bw-briefing></section>`;
  }

  #row(team, zones) {
    return html`<tr><th scope="row"><bw-mark .mark=${team.mark}></bw-mark> ${team.name}</th>
      ${zones.map(zone => html`<td>${this.#place(team, zone)}</td>`)}</tr>`;
  }

  #place(team, zone) {
    const standing = this.#standing(team, zone);
    const left = standing.until === null ? 0 : minutesLeft(standing.until, safetyWatch.now());
    const look = standing.state !== 'valid' ? 'quiet none' : left <= ENDING_MIN ? 'ending' : 'valid';
    return html`<button class="button ${look}" aria-label="${team.name}, ${zoneName(zone)}: ${words(standing, left)}"
      @click=${() => this.#ask([team], zone, standing)}>
      <bw-icon name=${standing.state === 'valid' ? (standing.reason ? 'unusual' : 'fine') : 'add'}></bw-icon>
      <span><span class="of">${zoneName(zone)} </span>${words(standing, left)}</span></button>`;
  }

  #forAll(zone) {
    const open = this.desk.teams.filter(team => this.#standing(team, zone).state !== 'valid');
    return open.length < 2 ? nothing : html`<button class="button quiet" aria-label="${zoneName(zone)}: ${t('page.safety.signAll', { count: open.length })}"
      @click=${() => this.#ask(open, zone, null)}><span><span class="of">${zoneName(zone)} </span>${t('page.safety.signAll', { count: open.length })}</span></button>`;
  }

  #standing(team, zone) {
    return standingOf(safetyWatch.signOffs, team.id, zone.key, safetyWatch.now());
  }

  #used(zone) {
    return safetyWatch.signOffs.some(each => each.zone === zone.key);
  }

  #ask(teams, zone, standing) {
    this.asked = { teams, zone, standing: standing?.state === 'valid' ? standing : null };
  }
}

const zoneName = zone => t(`catalogue.zone.${zone.key}`);

function words({ state, until, reason }, left) {
  if (state === 'valid') return t(reason ? 'page.safety.overrideLeft' : 'page.safety.left', { time: clock(until), minutes: left });
  return state === 'none' ? t('page.safety.sign') : t(`page.safety.short.${state}`, { time: clock(until) });
}

customElements.define('bw-sign-offs', SignOffs);

export const signOffs = desk => html`<bw-sign-offs .desk=${desk}></bw-sign-offs>`;
