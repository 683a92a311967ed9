/** What a teacher may change about a team: its name, its code, or joining it to another. */
import { put } from '../core/http.js';
import { newId } from '../core/ids.js';
import { t } from '../core/texts.js';
import { PageElement, html, nothing } from '../kit/kit.js';
import { showCode } from './code.js';

/** `team`, and the `others` it may be joined to. Fires `changed`. */
class TeamEdit extends PageElement {
  static properties = { team: { attribute: false }, others: { attribute: false }, open: { state: true }, into: { state: true } };

  constructor() {
    super();
    this.codeId = newId();
  }

  render() {
    const { team } = this;
    return html`<details class="fold" .open=${Boolean(this.open)} @toggle=${event => { this.open = event.target.open; }}>
      <summary aria-label=${t('page.desk.changeTeamOf', { name: team.name })}>${t('page.desk.changeTeam')}</summary>
      ${this.open ? html`<div class="flow">
        <bw-form .label=${t('page.desk.rename')} .send=${this.#rename} .fields=${html`
          <bw-field name="name" maxlength="24" .label=${t('page.desk.newName')} .value=${team.name}></bw-field>`}></bw-form>
        <bw-form .label=${t('page.desk.newCode')} .send=${this.#renew} .fields=${html`
          <h3>${t('page.desk.lostPhone')}</h3><p class="soft small">${t('page.desk.lostPhoneMeans')}</p>
          <label class="tick"><input type="checkbox" name="endPasses"><span>${t('page.desk.endPasses')}</span></label>`}></bw-form>
        ${this.others.length ? this.#joining() : nothing}
      </div>` : nothing}</details>`;
  }

  #joining() {
    return html`<bw-form .label=${t('page.desk.join')} .send=${this.#join} .fields=${html`
      <h3>${t('page.desk.joinTitle')}</h3><p class="soft small">${t('page.desk.joinMeans', { name: this.team.name })}</p>
      <bw-picker name="into" .label=${t('page.desk.joinInto')} .none=${t('page.desk.joinNone')} .value=${this.into ?? ''}
        .options=${this.others.map(({ id, name }) => ({ key: id, label: name }))} @chosen=${event => { this.into = event.detail; }}></bw-picker>
      <label class="tick"><input type="checkbox" name="sure"><span>${t('page.desk.joinSure')}</span></label>`}></bw-form>`;
  }

  #rename = async ({ name }) => {
    await put(`/api/teams/${this.team.id}/name`, { name });
    this.#changed();
  };

  #renew = async ({ endPasses }) => {
    const team = await put(`/api/team-codes/${this.codeId}`, { teamId: this.team.id, endPasses: endPasses === 'on' });
    this.codeId = newId();
    this.#changed();
    showCode({ title: team.name, code: team.code, picture: `/api/teams/${team.id}/link.svg` });
  };

  #join = async ({ sure }) => {
    const picker = this.querySelector('bw-picker');
    if (!this.into) {
      picker.complaint = t('page.desk.joinMissing');
      return picker.focus();
    }
    if (sure !== 'on') return this.querySelector('[name="sure"]').focus();
    await put(`/api/teams/${this.team.id}/merger`, { into: this.into });
    this.#changed();
  };

  #changed() {
    this.open = false;
    this.dispatchEvent(new CustomEvent('changed'));
  }
}

customElements.define('bw-team-edit', TeamEdit);
