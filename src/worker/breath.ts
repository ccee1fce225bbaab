/** Lets in what has been sent to a worker while it was at work. */

/** Ends once messages that were sent before have been dealt with; a timer would wait four milliseconds each time. */
export function breath(): Promise<void> {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(null);
  });
}
