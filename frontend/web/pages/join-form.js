/** Joins a phone to its team by a code; when the code is the lab day's, a new team gets its name here. */
import { Refused, post, put } from '../core/http.js';
import { newId } from '../core/ids.js';
import { t } from '../core/texts.js';
import { PageElement, html } from '../kit/kit.js';

class JoinForm extends PageElement {
  static properties = { code: {}, opened: { state: true } };

  constructor() {
    super();
    this.code = '';
    this.teamId = newId();
    this.claim = newId();
  }

  render() {
    return this.opened ? this.#nameTeam() : this.#enterCode();
  }

  /** Tries the code that came with the link, as if it had been typed. */
  async tryCode() {
    for (const part of [this, 'bw-form', 'bw-field']) {
      await (part === this ? this : this.querySelector(part)).updateComplete;
    }
    this.querySelector('form').requestSubmit();
  }

  #enterCode() {
    return html`<bw-form .label=${t('page.join.enter')} .send=${values => this.#join(values.code)} .fields=${html`
      <bw-field name="code" look="code" .label=${t('page.join.code')} .hint=${t('page.join.codeHint')}
        .value=${this.code} enterkeyhint="go"></bw-field>`}></bw-form>`;
  }

  #nameTeam() {
    return html`<div class="flow">
      <p class="soft">${t('page.join.day', { title: this.opened.labDayTitle })}</p>
      <bw-form .label=${t('page.join.create')} .send=${values => this.#create(values.name)} .fields=${html`
        <bw-field name="name" .label=${t('page.join.name')} .hint=${t('page.join.nameHint')} maxlength="24"
          enterkeyhint="go"></bw-field>`}></bw-form>
      <button class="button plain" @click=${this.#again}>${t('page.join.otherCode')}</button></div>`;
  }

  async #join(code) {
    this.code = code;
    const answer = await post('/api/access/join', { code }).catch(error => { throw ofCode(error); });
    if (answer.kind === 'team') this.#arrived();
    else this.opened = answer;
  }

  async #create(name) {
    await put(`/api/teams/${this.teamId}`, { labDayId: null, code: this.code, name, claim: this.claim });
    this.#arrived();
  }

  #again() {
    this.opened = null;
  }

  #arrived() {
    location.assign('/bench.html');
  }
}

/** The server says of every way in alike that something does not fit; here it can only be the code. */
const ofCode = error => (error.code === 'access.refused' ? new Refused(error.status, { code: error.code, field: 'code', detail: t('page.join.wrong') }) : error);

customElements.define('bw-join-form', JoinForm);
