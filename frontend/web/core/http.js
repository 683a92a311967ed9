/** The only door to the server. Answers become bodies, problem details become a Refused, silence becomes Unreachable. */

import { language } from './language.js';

const PATIENCE_MS = 10_000;
const LONG_PATIENCE_MS = 90_000;
const SAFE = new Set(['GET', 'HEAD']);

/** The server understood and said no. Fields as in the problem detail; `detail` is what, why and the way out in words. */
export class Refused extends Error {
  constructor(status, problem) {
    super(problem.detail ?? problem.title ?? `HTTP ${status}`);
    this.name = 'Refused';
    this.status = status;
    this.code = problem.code ?? '';
    this.detail = this.message;
    this.field = problem.field ?? null;
    this.value = problem.value ?? null;
    this.limit = problem.limit ?? null;
    this.wayOut = problem.wayOut ?? null;
    this.choices = problem.choices ?? [];
  }
}

/** No answer: the network is gone, the server is away, or it took longer than the patience. */
export class Unreachable extends Error {
  constructor(cause) {
    super('no answer', { cause });
    this.name = 'Unreachable';
  }
}

/**
 * Makes the functions from a fetch, a way to read document.cookie, a maker of requests that tell their progress, the
 * language of refusals and a patience.
 */
export function createHttp({ fetch, cookies, request, language = 'en', patienceMs = PATIENCE_MS }) {
  async function exchange(method, path, { body, headers = {}, signal, cache, patience } = {}) {
    if (!SAFE.has(method)) await tokenAtHand(signal);
    const response = await send(method, path, body, headers, signal, cache, patience);
    const content = await contentOf(response);
    if (!response.ok) throw new Refused(response.status, content ?? {});
    return { body: content, status: response.status, etag: response.headers.get('ETag') };
  }

  async function send(method, path, body, headers, signal, cache = SAFE.has(method) ? 'no-cache' : 'no-store', patience = patienceMs) {
    const abort = new AbortController();
    const giveUp = () => abort.abort();
    const timer = setTimeout(giveUp, patience);
    if (signal?.aborted) giveUp();
    signal?.addEventListener('abort', giveUp);
    try {
      return await fetch(path, {
        method,
        credentials: 'same-origin',
        cache,
        headers: headersFor(method, body, headers),
        body: body === undefined ? undefined : JSON.stringify(body),
        signal: abort.signal,
      });
    } catch (cause) {
      throw new Unreachable(cause);
    } finally {
      clearTimeout(timer);
      signal?.removeEventListener('abort', giveUp);
    }
  }

  async function tokenAtHand(signal) {
    if (!xsrfToken(cookies())) await send('GET', '/api/access', undefined, {}, signal);
  }

  /**
   * Sends a file, for as long as it takes; `said(part)` hears how much of it is on the server, in [0, 1]. What the server
   * does with it afterwards has no patience either.
   */
  async function upload(path, file, said) {
    await tokenAtHand();
    const answer = await sent(path, file, said);
    const content = contentIn(answer.responseText, answer.getResponseHeader('Content-Type'));
    if (answer.status >= 400) throw new Refused(answer.status, content ?? {});
    return content;
  }

  function sent(path, file, said) {
    return new Promise((done, fail) => {
      const ask = request();
      ask.open('POST', path);
      const headers = { ...headersFor('POST', undefined, {}), 'Content-Type': 'application/zip' };
      Object.entries(headers).forEach(([name, value]) => ask.setRequestHeader(name, value));
      ask.upload.onprogress = ({ loaded, total }) => said(total > 0 ? loaded / total : 1);
      ask.onload = () => done(ask);
      ask.onerror = cause => fail(new Unreachable(cause));
      ask.send(file);
    });
  }

  function headersFor(method, body, extra) {
    const headers = { Accept: 'application/json, application/problem+json', 'Accept-Language': language, ...extra };
    if (body !== undefined) headers['Content-Type'] = 'application/json';
    const token = xsrfToken(cookies());
    if (!SAFE.has(method) && token) headers['X-XSRF-TOKEN'] = token;
    return headers;
  }

  const bodyOf = async (method, path, options) => (await exchange(method, path, options)).body;
  return {
    exchange,
    get: path => bodyOf('GET', path),
    /** What the server works out from a whole day's records; a slow one may take its time. */
    gather: path => bodyOf('GET', path, { patience: LONG_PATIENCE_MS }),
    /** A file of the pages: the browser may answer from what it keeps, for as long as the server said. */
    file: url => bodyOf('GET', url, { cache: 'default' }),
    put: (path, body, headers) => bodyOf('PUT', path, { body, headers }),
    post: (path, body, headers) => bodyOf('POST', path, { body, headers }),
    /** Asks for something to be worked out; an abort of the signal ends it as Unreachable. */
    ask: (path, body, signal) => bodyOf('POST', path, { body, signal }),
    /** Sends what takes the server long to look through. */
    deliver: (path, body) => bodyOf('POST', path, { body, patience: LONG_PATIENCE_MS }),
    upload,
  };
}

function xsrfToken(cookies) {
  const pair = cookies.split('; ').find(each => each.startsWith('XSRF-TOKEN='));
  return pair ? decodeURIComponent(pair.slice('XSRF-TOKEN='.length)) : '';
}

async function contentOf(response) {
  const text = await response.text().catch(cause => { throw new Unreachable(cause); });
  return contentIn(text, response.headers.get('Content-Type'));
}

const contentIn = (text, type) => (text !== '' && /json/.test(type ?? '') ? JSON.parse(text) : null);

export const { ask, deliver, exchange, file, gather, get, put, post, upload } = createHttp({
  fetch: (...args) => globalThis.fetch(...args),
  cookies: () => document.cookie,
  request: () => new XMLHttpRequest(),
  language,
});
