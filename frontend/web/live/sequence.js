/**
 * Snapshot and sequence: which message to take, which to ignore, and when the whole picture must be fetched again.
 *
 * Pure functions from one state to the next; no clock, no socket. A message is `{epoch, seq, kind, body}`: `epoch`
 * changes when the numbers begin anew, `seq` grows by one with each state of the topic, and a message of kind `beat`
 * carries no body but the seq so far, so that the loss of the last message is noticed too.
 *
 * @typedef {{epoch: string, seq: number, kind: string, body: ?object}} Message
 * @typedef {{epoch: ?string, seq: number, body: ?object, wanting: boolean, kept: Message[]}} Sequence
 *   `wanting`: a snapshot is needed before anything else can be taken; `kept`: what was heard meanwhile
 */

/** More than this many messages are not kept; one that is dropped shows up as a gap. */
const MOST_KEPT = 64;

/** @type {Sequence} */
export const UNHEARD = Object.freeze({ epoch: null, seq: -1, body: null, wanting: false, kept: [] });

/** A new subscription: what was missed before it is unknown, the last good picture stays. */
export function subscribed(sequence) {
  return wanting(sequence, []);
}

/** A message of the topic arrived. */
export function heard(sequence, message) {
  if (sequence.wanting) return { ...sequence, kept: [...sequence.kept, message].slice(-MOST_KEPT) };
  if (message.epoch !== sequence.epoch) return wanting(sequence, [message]);
  return message.kind === 'beat' ? heardBeat(sequence, message) : heardState(sequence, message);
}

/** A snapshot arrived: take it unless it is older than what is shown, then go through what was kept. */
export function snapshotArrived(sequence, snapshot) {
  const newest = isOlder(snapshot, sequence) ? sequence : { ...sequence, ...pictureOf(snapshot) };
  return sequence.kept.reduce(heard, { ...newest, wanting: false, kept: [] });
}

function heardBeat(sequence, beat) {
  return beat.seq > sequence.seq ? wanting(sequence, []) : sequence;
}

function heardState(sequence, message) {
  if (message.seq <= sequence.seq) return sequence;
  if (message.seq > sequence.seq + 1) return wanting(sequence, [message]);
  return { ...sequence, ...pictureOf(message) };
}

function wanting(sequence, kept) {
  return { ...sequence, wanting: true, kept };
}

function isOlder(snapshot, sequence) {
  return snapshot.epoch === sequence.epoch && snapshot.seq < sequence.seq;
}

function pictureOf({ epoch, seq, body }) {
  return { epoch, seq, body };
}
