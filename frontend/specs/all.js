/** Runs the spec files that the address names: index.html#quantity.spec.js,outbox.spec.js */
import { run } from './spec.js';

for (const file of location.hash.slice(1).split(',')) await import(`./${file}`);
await run();
