/** The log of accidents and near misses: apart from results, for teachers alone. */
import { serverClock } from '../core/clock.js';
import { get, put } from '../core/http.js';
import { clock } from '../core/format.js';
import { newId } from '../core/ids.js';
import { t } from '../core/texts.js';
import { PageElement, html, keyed, nothing } from '../kit/kit.js';
import { safetyWatch } from '../safety/watch.js';

/** `desk` as the Desk loads it: day and teams. */
class Incidents extends PageElement {
  static properties = { desk: { attribute: false }, log: { state: true }, draft: { state: true } };

  constructor() {
    super();
    this.log = [];
    this.draft = fresh();
  }

  connectedCallback() {
    super.connectedCallback();
    this.end = safetyWatch.start(this.desk.day.id, () => this.#load());
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    this.end();
  }

  render() {
    const standing = this.log.filter(each => !each.replacedBy).reverse();
    return html`<section class="flow"><h2>${t('page.safety.incidents')}</h2>
      <p class="soft">${t('page.safety.incidentsLead')}</p>
      ${standing.length ? html`<ul class="bare incidents">${standing.map(each => this.#line(each))}</ul>` : html`<p class="soft">${t('page.safety.noIncident')}</p>`}
      <details class="fold narrow" .open=${Boolean(this.draft.replaces)}><summary>${t(this.draft.replaces ? 'page.safety.correctIncident' : 'page.safety.newIncident')}</summary>
        ${keyed(this.draft.id, this.#form())}</details></section>`;
  }

  #line(incident) {
    const team = this.desk.teams.find(each => each.id === incident.teamId);
    const zone = incident.zone ? t(`catalogue.zone.${incident.zone}`) : null;
    const earlier = this.#earlier(incident);
    return html`<li class=${incident.lookedAt ? '' : 'new'}><p class="apart"><span><strong>${clock(incident.noticedAt)}</strong>
        ${team ? html`<bw-mark .mark=${team.mark}></bw-mark> ${team.name}` : nothing} ${zone ? html`<span class="tag">${zone}</span>` : nothing}</span>
        <button class="button plain" aria-label=${t('page.safety.correctAt', { time: clock(incident.noticedAt) })}
          @click=${() => { this.draft = { ...incident, id: newId(), replaces: incident.id }; }}>${t('page.bench.correct')}</button></p>
      ${incident.lookedAt ? nothing : html`<p><button class="button quiet" aria-label=${t('page.safety.lookedAtOf', { time: clock(incident.noticedAt) })}
        @click=${() => this.#look(incident)}>${t('page.safety.lookedAt')}</button></p>`}
      <p>${incident.happened}</p><p class="soft">${t('page.safety.done')} ${incident.done}</p>
      ${earlier.length ? html`<details class="fold"><summary>${t('page.safety.earlier', { count: earlier.length })}</summary>
        ${earlier.map(each => html`<p class="soft">${clock(each.acceptedAt)}: ${each.happened} ${each.done}</p>`)}</details>` : nothing}</li>`;
  }

  #form() {
    const { teams } = this.desk;
    return html`<bw-form .label=${t('page.safety.saveIncident')} .send=${values => this.#send(values)} .fields=${html`
      <bw-field name="happened" maxlength="500" .label=${t('page.safety.happened')} .hint=${t('page.safety.noNames')} .value=${this.draft.happened}></bw-field>
      <bw-field name="done" maxlength="500" .label=${t('page.safety.whatDone')} .value=${this.draft.done}></bw-field>
      <div class="pair">
        <bw-picker .label=${t('page.safety.whichTeam')} .none=${t('page.safety.noTeam')} .value=${this.draft.teamId ?? ''}
          .options=${teams.map(team => ({ key: team.id, label: team.name }))} @chosen=${event => { this.draft.teamId = event.detail || null; }}></bw-picker>
        <bw-picker .label=${t('page.safety.whichZone')} .none=${t('page.safety.noZone')} .value=${this.draft.zone ?? ''}
          .options=${(safetyWatch.catalogue?.zones ?? []).map(({ key }) => ({ key, label: t(`catalogue.zone.${key}`) }))}
          @chosen=${event => { this.draft.zone = event.detail || null; }}></bw-picker></div>`}></bw-form>
      ${this.draft.replaces ? html`<button class="button plain" @click=${() => { this.draft = fresh(); }}>${t('page.safety.leaveIncident')}</button>` : nothing}`;
  }

  #earlier({ id }) {
    const before = this.log.find(each => each.replacedBy === id);
    return before ? [before, ...this.#earlier(before)] : [];
  }

  async #send({ happened, done }) {
    const { id, teamId, zone, replaces, noticedAt } = this.draft;
    await put(`/api/incidents/${id}`, {
      labDayId: this.desk.day.id, teamId, zone, happened, done, replaces, noticedAt: replaces ? noticedAt : serverClock.stamp(),
    });
    this.draft = fresh();
    await this.#load();
  }

  async #look({ id }) {
    await put(`/api/incidents/${id}/look`).catch(() => {});
    await this.#load();
  }

  async #load() {
    this.log = await get(`/api/labdays/${this.desk.day.id}/incidents`).catch(() => this.log);
  }
}

const fresh = () => ({ id: newId(), teamId: null, zone: null, happened: '', done: '', replaces: null });

customElements.define('bw-incidents', Incidents);

export const incidents = desk => html`<bw-incidents .desk=${desk}></bw-incidents>`;
