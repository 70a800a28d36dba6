import { randomUUID } from 'node:crypto';
import type { FastifyInstance, onRouteHookHandler } from 'fastify';
import { openServices } from '../../src/app/open-services.ts';
import type { Services } from '../../src/app/services.ts';
import { buildApp } from '../../src/server/app.ts';
import { ownEntrance } from '../../src/server/entrance.ts';
import { checkAnswers } from './answer-check.ts';
import { sharedReaders } from './shared-readers.ts';
import { temporaryFolder } from './temporary-home.ts';

/** What a test knows of an answer: its status, and a body that it looks into as it pleases. */
// biome-ignore lint/suspicious/noExplicitAny: the tests check these shapes, so nothing may be assumed of them
type Answer = { status: number; body: any };

export type TestApp = {
	readonly app: FastifyInstance;
	readonly services: Services;
	readonly get: (url: string) => Promise<Answer>;
	readonly send: (method: 'POST' | 'PUT' | 'PATCH' | 'DELETE', url: string, body?: unknown) => Promise<Answer>;
	/** Uploads files and waits until all are read. */
	readonly upload: (
		fields: Readonly<Record<string, string>>,
		files: readonly { name: string; bytes: Uint8Array }[],
	) => Promise<Answer>;
	readonly close: () => Promise<void>;
};

/** A multipart body as a browser sends it (RFC 7578). */
export function multipartBody(
	fields: Readonly<Record<string, string>>,
	files: readonly { name: string; bytes: Uint8Array }[],
) {
	const boundary = `----dyelot${randomUUID()}`;
	const parts: Uint8Array[] = [];
	const line = (text: string) => parts.push(new TextEncoder().encode(`${text}\r\n`));
	for (const [name, value] of Object.entries(fields))
		line(`--${boundary}\r\nContent-Disposition: form-data; name="${name}"\r\n\r\n${value}`);
	for (const { name, bytes } of files) {
		line(
			`--${boundary}\r\nContent-Disposition: form-data; name="file"; filename="${name}"\r\nContent-Type: application/octet-stream\r\n`,
		);
		parts.push(bytes);
		line('');
	}
	line(`--${boundary}--`);
	return { payload: Buffer.concat(parts), headers: { 'content-type': `multipart/form-data; boundary=${boundary}` } };
}

/** The whole application over a home in a temporary folder; requests go through `inject`, no port is opened. */
export async function testApp(
	options: { readonly share?: boolean; readonly homePath?: string; readonly onRoute?: onRouteHookHandler } = {},
): Promise<TestApp> {
	const problems: string[] = [];
	const services = await openServices({
		homePath: options.homePath ?? temporaryFolder(),
		share: options.share ?? false,
		log: (sentence) => problems.push(sentence),
		pool: sharedReaders(),
	});
	const app = await buildApp(ownEntrance(services), options.onRoute ? { onRoute: options.onRoute } : {});
	checkAnswers(app, (problem) => problems.push(problem));
	const answer = (response: { statusCode: number; payload: string; headers: Record<string, unknown> }) => ({
		status: response.statusCode,
		body: String(response.headers['content-type']).includes('json') ? JSON.parse(response.payload) : response.payload,
	});
	const headers = { host: 'localhost:4810' };
	return {
		app,
		services,
		get: async (url) => answer(await app.inject({ method: 'GET', url, headers })),
		send: async (method, url, body) =>
			answer(await app.inject({ method, url, headers, ...(body === undefined ? {} : { payload: body as object }) })),
		upload: async (fields, files) => {
			const { payload, headers: type } = multipartBody(fields, files);
			const response = answer(
				await app.inject({ method: 'POST', url: '/api/photos', headers: { ...headers, ...type }, payload }),
			);
			await services.jobs.settled();
			return response;
		},
		close: async () => {
			await app.close();
			await services.close();
			if (problems.length > 0) throw new Error(problems.join('\n'));
		},
	};
}
