// A server or a reader of a host, started by the drills, which give photos of a killed reader to another sooner than an operator would.
import { serveHosted } from '../../src/server/hosted/serve-hosted.ts';
import { workHosted } from '../../src/server/hosted/work-hosted.ts';
import { objectPhotoFiles } from '../../src/store/object-photo-files.ts';
import type { ObjectStoreSettings } from '../../src/store/object-requests.ts';
import { openObjectStore } from '../../src/store/object-store.ts';

/** What a process of a drill is told. */
export type DrillProcess = {
	readonly kind: 'host' | 'work';
	readonly connectionString: string;
	readonly objects: ObjectStoreSettings;
	readonly workFolder: string;
	readonly port: number;
};

const { kind, connectionString, objects, workFolder, port } = JSON.parse(process.argv[2]!) as DrillProcess;
const store = openObjectStore(objects);
const shared = {
	connectionString,
	filesOf: (homeId: string) => objectPhotoFiles(store, homeId),
	photosReady: async () => void (await store.size('x')),
	workFolder,
	threads: 1,
	expireSeconds: 8,
	listenOn: '127.0.0.1',
};
if (kind === 'work') await workHosted({ ...shared, port: null });
else await serveHosted({ ...shared, port, proxies: [], origin: new URL(`http://localhost:${port}`) });
