import { get } from '../core/http.js';
import { t } from '../core/texts.js';
import { html, nothing, render } from '../kit/kit.js';

const place = document.createElement('div');
document.body.append(place);

/** Shows a join code as large as the screen allows, with the picture that a phone's camera reads. */
export async function showCode({ title, code, picture }) {
  draw({ title, code, picture, address: location.host });
  place.querySelector('dialog').showModal();
  const [base] = await get('/api/addresses').catch(() => []);
  if (base) draw({ title, code, picture, address: base.replace(/^https?:\/\//, '') });
}

function draw({ title, code, picture, address }) {
  render(html`<dialog class="code" aria-labelledby="code-title" @close=${() => render(nothing, place)}>
    <img src=${picture} alt=${t('page.desk.picture')} @error=${event => { event.target.hidden = true; }}>
    <div class="words">
      <h2 id="code-title">${title}</h2>
      <p>${t('page.desk.openAddress')}<br><strong>${address}</strong></p>
      <p>${t('page.desk.typeCode')}<br><strong class="letters">${code}</strong></p>
      <form method="dialog"><button class="button quiet">${t('page.desk.done')}</button></form>
    </div>
  </dialog>`, place);
}
