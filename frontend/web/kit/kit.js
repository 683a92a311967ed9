/** Everything a page draws with: import { html, render } from '/kit/kit.js'. */
export { PageElement, html, live, nothing, render, repeat, svg, uniqueId } from './element.js';
export { markOf } from './mark.js';
import './choices.js';
import './field.js';
import './header.js';
import './icon.js';
import './notice.js';
