import { run } from './spec.js';
import './http.spec.js';
import './ids.spec.js';
import './outbox.spec.js';
import './plausibility.spec.js';
import './progress.spec.js';
import './quantity.spec.js';
import './store.spec.js';

await run();
