/** Start: the first teacher's set-up, a teacher's sign-in, and the way for a team to join with a code. */
import { get, post } from '../core/http.js';
import { t } from '../core/texts.js';
import { html, nothing, render } from '../kit/kit.js';

render(html`<h1>${t('page.start.title')}</h1>`, document.getElementById('main'));
