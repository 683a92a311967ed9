import { day as dateWords, clock } from '../core/format.js';
import { Refused, get, post, put } from '../core/http.js';
import { t } from '../core/texts.js';
import { PageElement, html, nothing } from '../kit/kit.js';
import { curl } from './logger-line.js';

/** Devices that may send readings of a team's cells or of a station's light: let in, shown once with their token, and taken back. */
class Loggers extends PageElement {
  static properties = {
    labDayId: {}, counted: {}, devices: { state: true }, teams: { state: true }, stations: { state: true }, cells: { state: true }, made: { state: true }, trouble: { state: true },
  };

  /** Whenever the day was counted anew: there may be more teams and stations now. */
  updated(changed) {
    if (changed.has('counted')) this.#load().catch(error => this.#say(error));
  }

  async #load() {
    const of = things => get(`/api/labdays/${this.labDayId}/${things}`);
    [this.devices, this.teams, this.stations, this.cells] = await Promise.all(['loggers', 'teams', 'stations', 'cells'].map(of));
  }

  render() {
    return html`<div class="flow"><p>${t('page.data.loggersLead')}</p>
      <div role="alert">${this.trouble ? html`<bw-notice tone="impossible" .text=${this.trouble}></bw-notice>` : nothing}</div>
      ${this.devices ? html`${this.#list()}${this.#form()}` : nothing}
      <div role="status">${this.made ? this.#shown() : nothing}</div></div>`;
  }

  #list() {
    if (this.devices.length === 0) return html`<p class="soft">${t('page.data.loggersNone')}</p>`;
    return html`<ul class="bare loggers">${this.devices.map(device => html`<li><div><strong>${device.name}</strong> <span class="soft">${this.#of(device)}</span>
      <p class="soft small">${this.#heard(device)}</p></div>
      ${device.revokedAt ? nothing : html`<button type="button" class="button quiet" aria-label=${t('page.data.loggerRevokeOne', { name: device.name })}
        @click=${() => this.#revoke(device)}>${t('page.data.loggerRevoke')}</button>`}</li>`)}</ul>`;
  }

  #of({ teamId, stationId }) {
    const thing = teamId ? this.teams.find(({ id }) => id === teamId) : this.stations.find(({ id }) => id === stationId);
    return t(teamId ? 'page.data.loggerOfTeam' : 'page.data.loggerOfStation', { name: thing?.name ?? '–' });
  }

  #heard({ lastAt, revokedAt }) {
    const when = at => ({ time: clock(at), date: dateWords(at.slice(0, 10)) });
    if (revokedAt) return t('page.data.loggerRevoked', when(revokedAt));
    return lastAt ? t('page.data.loggerLast', when(lastAt)) : t('page.data.loggerSilent');
  }

  #form() {
    const options = [
      ...this.teams.map(({ id, name }) => ({ key: `team ${id}`, label: t('page.data.loggerOfTeam', { name }) })),
      ...this.stations.map(({ id, name }) => ({ key: `station ${id}`, label: t('page.data.loggerOfStation', { name }) })),
    ];
    if (options.length === 0) return html`<p class="soft">${t('page.data.loggersNothing')}</p>`;
    this.of ??= options[0].key;
    return html`<bw-form .label=${t('page.data.loggerMake')} .send=${this.#make} .fields=${html`
      <bw-field name="name" maxlength="40" .label=${t('page.data.loggerName')} .hint=${t('page.data.loggerNameHint')}></bw-field>
      <bw-picker .label=${t('page.data.loggerMay')} .value=${this.of} .options=${options} @chosen=${({ detail }) => { this.of = detail; }}></bw-picker>`}></bw-form>`;
  }

  #make = async ({ name }) => {
    const [kind, id] = this.of.split(' ');
    this.made = await post(`/api/labdays/${this.labDayId}/loggers`, { name, teamId: kind === 'team' ? id : null, stationId: kind === 'station' ? id : null });
    await this.#load();
  };

  async #revoke({ id }) {
    this.trouble = null;
    try {
      await put(`/api/loggers/${id}/revocation`, {});
      if (this.made?.id === id) this.made = null;
      await this.#load();
    } catch (error) {
      this.#say(error);
    }
  }

  #shown() {
    const { name, token, teamId } = this.made;
    const cell = this.cells.find(each => each.teamId === teamId);
    return html`<section class="token flow"><h3>${t('page.data.loggerToken', { name })}</h3><p>${t('page.data.loggerTokenOnce')}</p>
      <p><code>${token}</code></p><p>${t('page.data.loggerCurl')}</p>
      <pre><code>${curl(location.origin, token, teamId ? { cell: cell?.label, station: this.stations[0]?.name } : null)}</code></pre>
      <p class="soft small">${t(teamId ? 'page.data.loggerCurlTeam' : 'page.data.loggerCurlStation')}</p></section>`;
  }

  #say(error) {
    this.trouble = error instanceof Refused ? error.detail : t('page.data.loggerNoAnswer');
  }
}

customElements.define('bw-loggers', Loggers);
