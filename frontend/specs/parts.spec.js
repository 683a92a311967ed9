import { add, at, use } from '/core/parts.js';
import { same, spec } from './spec.js';

spec('runs a module once, after what it imports, and only when it is needed', async () => {
  const ran = [];
  add({
    '/spec/b.js': [[], async () => { ran.push('b'); return { two: 2 }; }],
    '/spec/a.js': [['/spec/b.js'], async ({ two }) => { ran.push('a'); return { four: 2 * two }; }],
    '/spec/idle.js': [[], async () => { ran.push('idle'); }],
  });
  same(ran, []);
  same((await use('/spec/a.js')).four, 4);
  await use('/spec/b.js');
  same(ran, ['b', 'a']);
});

spec('fetches what is imported later when somebody asks for it', async () => {
  let fetched = 0;
  add({}, async () => {
    fetched++;
    add({ '/spec/later.js': [[], async () => ({ here: true })] });
  });
  same(fetched, 0);
  same((await use('/spec/later.js')).here, true);
  await use('/spec/later.js');
  same(fetched, 1);
});

spec('finds a library by its name', async () => {
  same(typeof (await use('lit')).html, 'function');
});

spec('knows the address of a module\'s own file', () => {
  same(at('/core/texts.js'), `${location.origin}/core/texts.js`);
});
