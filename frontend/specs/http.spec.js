import { createHttp, Refused, Unreachable } from '/core/http.js';
import { same, spec, thrownBy } from './spec.js';

const answer = (status, body, type = 'application/json') =>
  new Response(body === null ? null : JSON.stringify(body), { status, headers: { 'Content-Type': type, ETag: '"7"' } });

function server(...answers) {
  const asked = [];
  const fetch = async (path, options) => {
    asked.push({ path, ...options });
    return answers.shift()();
  };
  return { asked, fetch };
}

const http = (fake, cookies = 'XSRF-TOKEN=a%2Bb') => createHttp({ fetch: fake.fetch, cookies: () => cookies });

spec('hands out the body of an answer', async () => {
  const fake = server(() => answer(200, { kind: 'nobody' }));
  same(await http(fake).get('/api/access'), { kind: 'nobody' });
});

spec('asks the server about an answer of its own again, and lets the browser keep a file', async () => {
  const fake = server(() => answer(200, {}), () => answer(200, {}));
  await http(fake).get('/api/catalogue');
  await http(fake).file('/texts/en.json');
  same(fake.asked.map(each => each.cache), ['no-cache', 'default']);
});

spec('sends the token of the cookie, decoded, with what changes something', async () => {
  const fake = server(() => answer(200, {}));
  await http(fake).put('/api/cells/1', { label: 'C1' });
  same(fake.asked[0].headers['X-XSRF-TOKEN'], 'a+b');
  same(fake.asked[0].body, '{"label":"C1"}');
});

spec('sends no token with what only reads', async () => {
  const fake = server(() => answer(200, {}));
  await http(fake).get('/api/catalogue');
  same('X-XSRF-TOKEN' in fake.asked[0].headers, false);
});

spec('asks for a token first when there is none', async () => {
  const fake = server(() => answer(200, {}), () => answer(200, {}));
  await http(fake, '').post('/api/access/join', { code: 'K7' });
  same(fake.asked.map(each => each.path), ['/api/access', '/api/access/join']);
});

spec('turns a problem detail into a refusal with code, field and sentence', async () => {
  const fake = server(() => answer(422, { code: 'label.taken', field: 'label', detail: 'Taken.' }, 'application/problem+json'));
  const refused = await thrownBy(() => http(fake).put('/api/cells/1', {}));
  same([refused instanceof Refused, refused.status, refused.code, refused.field, refused.detail], [true, 422, 'label.taken', 'label', 'Taken.']);
});

spec('survives an error page that is not JSON', async () => {
  const fake = server(() => new Response('<h1>Bad gateway</h1>', { status: 502, headers: { 'Content-Type': 'text/html' } }));
  same((await thrownBy(() => http(fake).get('/api/access'))).status, 502);
});

spec('calls silence unreachable', async () => {
  const fake = server(() => { throw new TypeError('Failed to fetch'); });
  same((await thrownBy(() => http(fake).get('/api/access'))) instanceof Unreachable, true);
});

spec('gives up waiting when its patience ends', async () => {
  const never = (path, { signal }) => new Promise((_, refuse) => signal.addEventListener('abort', () => refuse(signal.reason)));
  const hasty = createHttp({ fetch: never, cookies: () => '', patienceMs: 1 });
  same((await thrownBy(() => hasty.get('/api/access'))) instanceof Unreachable, true);
});

spec('hands out the entity tag for a later edit', async () => {
  const fake = server(() => answer(200, {}));
  same((await http(fake).exchange('GET', '/api/labdays/1')).etag, '"7"');
});

function fileDoor(status, body) {
  const seen = { headers: {}, parts: [] };
  return { seen, request: () => ({
    upload: {},
    open(...opened) { seen.opened = opened; },
    setRequestHeader(name, value) { seen.headers[name] = value; },
    getResponseHeader: () => 'application/json',
    send(file) {
      this.upload.onprogress({ loaded: 2, total: 8 });
      Object.assign(seen, { file });
      Object.assign(this, { status, responseText: JSON.stringify(body) });
      this.onload();
    },
  }) };
}

const uploading = door => createHttp({ fetch: null, cookies: () => 'XSRF-TOKEN=a', request: door.request });

spec('sends a file with the token and tells how much of it has arrived', async () => {
  const door = fileDoor(200, { kept: true });
  const parts = [];
  same(await uploading(door).upload('/api/archives', 'zip', part => parts.push(part)), { kept: true });
  same([parts, door.seen.file, door.seen.headers['X-XSRF-TOKEN'], door.seen.headers['Content-Type']], [[0.25], 'zip', 'a', 'application/zip']);
});

spec('says why a file was refused', async () => {
  const refused = await thrownBy(() => uploading(fileDoor(422, { code: 'archive.altered', detail: 'Altered.' })).upload('/api/archives', 'zip', () => {}));
  same([refused instanceof Refused, refused.code, refused.detail], [true, 'archive.altered', 'Altered.']);
});

spec('waits longer for what the server gathers from a whole day', async () => {
  const slow = { fetch: (path, { signal }) => new Promise((done, fail) => {
    signal.addEventListener('abort', () => fail(new Error('gave up')));
    setTimeout(() => done(answer(200, { teams: 3 })), 60);
  }) };
  const impatient = createHttp({ fetch: slow.fetch, cookies: () => '', patienceMs: 5 });
  same((await thrownBy(() => impatient.get('/api/labdays'))) instanceof Unreachable, true);
  same(await impatient.gather('/api/labdays/1/report'), { teams: 3 });
});
