/**
 * The official builds of onnxruntime 1.30 send usage events to their maker and keep a device id in the user's cache folder unless this
 * variable is set before the library is loaded (measured: with it neither the connection nor the files appear; see tests/photo/networks/no-telemetry.test.ts).
 * Nothing may leave the user's machine, so it is set first of all. It must happen on the main thread: what a worker writes
 * into its environment never reaches the library.
 */
process.env.ORT_DISABLE_TELEMETRY = '1';
