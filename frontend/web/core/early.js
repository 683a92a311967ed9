/** What every page asks the server for, asked for while the page's own modules are still coming. */
import './caller.js';
import './texts.js';
