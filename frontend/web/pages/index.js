/** Start: the first teacher's set-up, a teacher's sign-in, and the way for a team to join with a code. */
import { post } from '../core/http.js';
import { t } from '../core/texts.js';
import { html, nothing, openPage } from '../kit/kit.js';
import './join-form.js';
import './own-sign-in.js';

const BUILT = Object.fromEntries(
  ['film', 'bake', 'dye', 'counterElectrode', 'fill', 'measure'].map(stage => [stage, 'passed']));

const NEW_PASSWORD = 'sh deploy/new-password.sh';

const { who, draw } = await openPage('start');

draw(html`<div class="start">
  <div class="flow lead">
    <bw-cell .stages=${BUILT}></bw-cell>
    <h1>${t('page.start.title')}</h1>
    <p>${t('page.start.lead')}</p>
    <p><a href="/calculator.html">${t('page.start.calculator')}</a></p>
    <bw-language></bw-language>
    ${who.demo ? html`<bw-notice .text=${t('page.start.demo')}></bw-notice>` : nothing}
  </div>
  <div class="flow doors">${doors()}</div>
</div>`);

function doors() {
  if (who.setupNeeded) return setUp();
  if (who.kind === 'teacher') {
    return [welcome(t('page.start.teacherHere', { name: who.name }), '/days.html', t('page.start.toDays')),
      html`<bw-own-sign-in .name=${who.name}></bw-own-sign-in>`];
  }
  if (who.kind === 'team') return [welcome(t('page.start.teamHere', { name: who.name }), '/bench.html', t('page.start.toBench')), join()];
  return [join(), signIn()];
}

function setUp() {
  return html`<section class="card flow"><h2>${t('page.start.setUp')}</h2>
    <p class="soft">${t('page.start.setUpLead')}</p>
    <bw-form .label=${t('page.start.setUpSend')} .send=${enter('/api/access/setup')} .fields=${html`
      <bw-field name="key" .label=${t('page.start.key')} .hint=${t('page.start.keyHint')}></bw-field>
      <bw-field name="name" autocomplete="username" .label=${t('page.start.name')} .hint=${t('page.start.nameHint')}></bw-field>
      <bw-field name="password" kind="password" autocomplete="new-password" .label=${t('page.start.password')}
        .hint=${t('page.start.passwordHint')}></bw-field>`}></bw-form></section>`;
}

function signIn() {
  return html`<details class="card fold-card"><summary>${t('page.start.signIn')}</summary>
    <bw-form .label=${t('page.start.signInSend')} .send=${enter('/api/access/sign-in')} .fields=${html`
      <bw-field name="name" autocomplete="username" .label=${t('page.start.name')}></bw-field>
      <bw-field name="password" kind="password" autocomplete="current-password" .label=${t('page.start.password')}></bw-field>`}></bw-form>
    ${forgotten()}</details>`;
}

function forgotten() {
  return html`<details class="fold forgotten"><summary>${t('page.start.forgotten')}</summary>
    <p class="soft">${t('page.start.forgottenLead')}</p><p><code>${NEW_PASSWORD}</code></p>
    <bw-form .label=${t('page.start.forgottenSend')} .send=${enter('/api/access/new-password')} .fields=${html`
      <bw-field name="key" .label=${t('page.start.forgottenKey')}></bw-field>
      <bw-field name="name" autocomplete="username" .label=${t('page.start.name')}></bw-field>
      <bw-field name="password" kind="password" autocomplete="new-password" .label=${t('page.account.new')}
        .hint=${t('page.start.passwordHint')}></bw-field>`}></bw-form></details>`;
}

function join() {
  return html`<section class="card flow"><h2>${t('page.start.join')}</h2>
    <bw-join-form></bw-join-form></section>`;
}

function welcome(sentence, address, label) {
  return html`<section class="card flow"><h2>${sentence}</h2><a class="button whole" href=${address}>${label}</a></section>`;
}

function enter(path) {
  return async values => {
    await post(path, values);
    location.assign('/days.html');
  };
}
