import { Client } from '@stomp/stompjs';

const HEARTBEAT_MS = 10_000;

/** Subscribes to one topic of this server's live endpoint; `closed` is called whichever way the connection ends. */
export function openStomp(topic, { opened, heard, closed }) {
  const client = new Client({
    brokerURL: liveAddress(location),
    reconnectDelay: 0, // `Line` decides when to try again
    connectionTimeout: HEARTBEAT_MS,
    heartbeatIncoming: HEARTBEAT_MS,
    heartbeatOutgoing: HEARTBEAT_MS,
    discardWebsocketOnCommFailure: true,
    onStompError: closed,
    onWebSocketClose: closed,
    onConnect() {
      client.subscribe(topic, (frame) => heard(JSON.parse(frame.body)));
      opened();
    },
  });
  client.activate();
  return { close: () => client.deactivate({ force: true }) };
}

function liveAddress({ protocol, host }) {
  return `${protocol === 'https:' ? 'wss' : 'ws'}://${host}/live`;
}
