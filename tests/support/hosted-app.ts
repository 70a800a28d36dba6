import { join } from 'node:path';
import type { FastifyInstance, onRouteHookHandler } from 'fastify';
import { type Host, openHost } from '../../src/app/hosting/host.ts';
import { hostsLink } from '../../src/app/hosting/joining.ts';
import { hostedApp } from '../../src/server/hosted/serve-hosted.ts';
import { directoryPhotoFiles } from '../../src/store/directory-photo-files.ts';
import type { PhotoFiles } from '../../src/store/photo-files.ts';
import { temporaryFolder } from './temporary-home.ts';

/** Good enough for a password of a test: four words. */
export const PASSWORD = 'oat rust navy sage';

/** What a test knows of an answer. */
// biome-ignore lint/suspicious/noExplicitAny: the tests check these shapes, so nothing may be assumed of them
type Answer = { readonly status: number; readonly body: any; readonly headers: Readonly<Record<string, unknown>> };

/** A browser of its own: it keeps its cookies. */
export type Browser = {
	ask(
		method: 'GET' | 'HEAD' | 'POST' | 'PUT' | 'PATCH' | 'DELETE',
		url: string,
		body?: unknown,
		headers?: object,
	): Promise<Answer>;
	/** The cookie that it would send. */
	cookie(): string;
	takeCookie(cookie: string): void;
};

export type HostedTest = {
	readonly host: Host;
	readonly app: FastifyInstance;
	readonly origin: URL;
	browser(): Browser;
	/** Somebody new, signed in, with the home that waited for them. The first is the host. */
	newcomer(name: string): Promise<Browser & { readonly home: string }>;
	/** A link that lets somebody in who begins a home of their own; the first link is the host's. */
	link(): Promise<string>;
	close(): Promise<void>;
};

export const tokenOf = (link: string): string => new URL(link).hash.slice(1);

function browserOf(app: FastifyInstance, origin: URL): Browser {
	let cookie = '';
	return {
		async ask(method, url, body, headers = {}) {
			const response = await app.inject({
				method,
				url,
				headers: { host: origin.host, ...(cookie ? { cookie } : {}), ...headers },
				...(body === undefined ? {} : { payload: body as object }),
			});
			for (const { name, value } of response.cookies) cookie = value === '' ? '' : `${name}=${value}`;
			const isJson = String(response.headers['content-type']).includes('json');
			return {
				status: response.statusCode,
				body: isJson && response.payload !== '' ? JSON.parse(response.payload) : response.payload,
				headers: response.headers,
			};
		},
		cookie: () => cookie,
		takeCookie: (other) => {
			cookie = other;
		},
	};
}

/** The whole hosted application over a database of its own; requests go through `inject`, no port is opened. */
export async function hostedTestApp(settings: {
	readonly connectionString: string;
	readonly address?: string;
	/** Proxies whose word is believed; left out: none. */
	readonly proxies?: readonly string[];
	readonly filesOf?: (homeId: string) => PhotoFiles;
	readonly onRoute?: onRouteHookHandler;
	readonly report?: (error: unknown) => void;
}): Promise<HostedTest> {
	const folder = temporaryFolder();
	const origin = new URL(settings.address ?? 'http://localhost:4810');
	const report =
		settings.report ??
		((error: unknown) => {
			throw error;
		});
	const host = await openHost({
		connectionString: settings.connectionString,
		filesOf: settings.filesOf ?? ((homeId) => directoryPhotoFiles(join(folder, 'photos', homeId))),
		workFolder: join(folder, 'work'),
		threads: 1,
		queuesWaiting: true,
		report,
		maxConnections: 4,
	});
	const { app } = await hostedApp(
		host,
		{ origin, proxies: settings.proxies ?? [], photosReady: async () => {} },
		{ silent: true, ...(settings.onRoute ? { onRoute: settings.onRoute } : {}) },
	);
	const browser = () => browserOf(app, origin);
	let first: Browser | null = null;
	const link = async () => {
		const own = await hostsLink(host, origin);
		return own ?? (await first!.ask('POST', '/api/host/people/links')).body.link;
	};
	return {
		host,
		app,
		origin,
		browser,
		link,
		async newcomer(name) {
			const one = browser();
			const joined = await one.ask('POST', '/api/host/join', {
				token: tokenOf(await link()),
				name,
				password: PASSWORD,
			});
			if (joined.status !== 200) throw new Error(JSON.stringify(joined.body));
			first ??= one;
			const [{ id: home }] = (await one.ask('GET', '/api/host/homes')).body;
			return { ...one, home };
		},
		async close() {
			await app.close();
			await host.close();
		},
	};
}
