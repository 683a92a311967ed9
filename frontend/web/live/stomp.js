import { Client } from '@stomp/stompjs';

const HEARTBEAT_MS = 10_000;

/**
 * One socket for all topics that a page follows. It opens with the first and ends for all at once, whichever way: a socket
 * that is dead for one topic is dead for the others, and each follower opens again with its own patience.
 *
 * @param {(ears: {connected: () => void, ended: () => void}) => {subscribe: Function, deactivate: Function}} connect
 * @returns {(topic: string, ears: {opened: Function, heard: Function, closed: Function}) => {close: () => void}}
 */
export function sharing(connect) {
  let shared = null;

  return function open(topic, ears) {
    shared ??= socket();
    return shared.join(topic, ears);
  };

  function socket() {
    const followers = [];
    let connected = false;
    let ended = false;
    const end = () => {
      if (ended) return;
      ended = true;
      shared = null;
      client.deactivate({ force: true });
      followers.forEach(({ ears }) => ears.closed());
    };
    const subscribe = ({ topic, ears }) => {
      client.subscribe(topic, frame => heardBy(ears, frame));
      ears.opened();
    };
    const client = connect({
      ended: end,
      connected() {
        connected = true;
        followers.forEach(subscribe);
      },
    });
    return {
      join(topic, ears) {
        const follower = { topic, ears };
        followers.push(follower);
        if (connected) subscribe(follower);
        return { close: end };
      },
    };
  }
}

const heardBy = (ears, frame) => ears.heard(JSON.parse(frame.body));

/** Subscribes to one topic of this server's live endpoint; `closed` is called whichever way the connection ends. */
export const openStomp = sharing(({ connected, ended }) => {
  const client = new Client({
    brokerURL: liveAddress(location),
    reconnectDelay: 0, // `Line` decides when to try again
    connectionTimeout: HEARTBEAT_MS,
    heartbeatIncoming: HEARTBEAT_MS,
    heartbeatOutgoing: HEARTBEAT_MS,
    discardWebsocketOnCommFailure: true,
    onStompError: ended,
    onWebSocketClose: ended,
    onConnect: connected,
  });
  client.activate();
  return client;
});

function liveAddress({ protocol, host }) {
  return `${protocol === 'https:' ? 'wss' : 'ws'}://${host}/live`;
}
