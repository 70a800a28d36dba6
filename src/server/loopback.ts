const LOOPBACK = new Set(['127.0.0.1', '::1', '::ffff:127.0.0.1']);

/** Whether an address from which a line comes is this computer's own. */
export const isLoopback = (address: string): boolean => LOOPBACK.has(address);
