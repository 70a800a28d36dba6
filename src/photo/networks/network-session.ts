import './no-telemetry.ts';
import { fileURLToPath } from 'node:url';
import { InferenceSession } from 'onnxruntime-node';

/**
 * Loads one of our networks by its path below `src/photo/networks`: the weights lie beside the TypeScript, whether this runs compiled or not. One
 * thread: photos are read side by side. Without the arena, memory goes back after each photo.
 */
export const loadedNetwork = (path: string): Promise<InferenceSession> =>
	InferenceSession.create(fileURLToPath(new URL(`../../../src/photo/networks/${path}`, import.meta.url)), {
		intraOpNumThreads: 1,
		interOpNumThreads: 1,
		graphOptimizationLevel: 'all',
		enableCpuMemArena: false,
		logSeverityLevel: 4,
	});
