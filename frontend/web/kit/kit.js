/** Everything a page draws with: import { html, openPage } from '../kit/kit.js'. */
export { PageElement, html, keyed, live, nothing, render, repeat, svg, uniqueId } from './element.js';
export { markOf } from './mark.js';
export { openPage } from './page.js';
import './cell.js';
import './choices.js';
import './countdown.js';
import './field.js';
import './form.js';
import './header.js';
import './icon.js';
import './language.js';
import './notice.js';
import './picker.js';
import './slider.js';
