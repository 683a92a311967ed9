import { newId } from '/core/ids.js';
import { same, spec } from './spec.js';

// RFC 9562, section 5.4: version 4 in bits 48 to 51, variant 10 in bits 64 and 65; all bits set but those.
spec('makes a version 4 UUID of random bytes', () =>
  same(newId(bytes => bytes.fill(0xff)), 'ffffffff-ffff-4fff-bfff-ffffffffffff'));

spec('makes ids that differ', () => same(new Set(Array.from({ length: 100 }, () => newId())).size, 100));
