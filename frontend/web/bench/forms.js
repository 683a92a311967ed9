/** Every form of the bench; loaded right after the first picture, so that the bench shows early and then needs no network. */
import '../lesson/heater-form.js';
import './outcome-form.js';
import './reading-form.js';
import './register-form.js';
import './settling.js';
import './step-timer.js';
import './sweep-form.js';
import './toggles-form.js';
import './work-form.js';
