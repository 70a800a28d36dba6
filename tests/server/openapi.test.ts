import { createConfig, lintFromString } from '@redocly/openapi-core';
import { Ajv2020 } from 'ajv/dist/2020.js';
import type { RouteOptions } from 'fastify';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { OPERATIONS } from '../../src/server/operations/all.ts';
import { type TestApp, testApp } from '../support/test-app.ts';

type Media = { readonly schema: object; readonly example?: unknown };
type Operation = {
	readonly operationId: string;
	readonly summary: string;
	readonly tags: readonly string[];
	readonly requestBody?: { readonly content: Readonly<Record<string, Media>> };
	readonly responses: Readonly<Record<string, { readonly content?: Readonly<Record<string, Media>> }>>;
};
type Document = {
	readonly paths: Readonly<Record<string, Readonly<Record<string, Operation>>>>;
	readonly tags: readonly { readonly name: string }[];
	readonly components: { readonly schemas: Readonly<Record<string, object>> };
};

let test: TestApp;
let document: Document;
const routes: RouteOptions[] = [];
beforeAll(async () => {
	test = await testApp({ share: true, onRoute: (route) => void routes.push(route) });
	document = (await test.get('/api/openapi.json')).body as Document;
});
afterAll(() => test.close());

const operations = () => Object.values(document.paths).flatMap((path) => Object.values(path));
/** Every JSON body and answer that the document describes. */
const medias = () =>
	operations().flatMap(({ operationId, requestBody, responses }) =>
		[requestBody, ...Object.values(responses)].flatMap((part) => {
			const media = part?.content?.['application/json'];
			return media ? [{ operationId, ...media }] : [];
		}),
	);

describe("the interface's own description", () => {
	it('passes the recommended rules of a linter of OpenAPI 3.1', async () => {
		const config = await createConfig({ extends: ['recommended'] });
		const problems = await lintFromString({ source: JSON.stringify(document), absoluteRef: 'openapi.json', config });
		expect(problems.map(({ ruleId, message, location }) => `${ruleId} ${message} ${location[0]?.pointer}`)).toEqual([]);
	});

	it('holds every route of the running program under /api but itself, and nothing else', () => {
		const running = routes
			.filter(({ url, method }) => url.startsWith('/api/') && url !== '/api/openapi.json' && method !== 'HEAD')
			.map(({ method, url }) => `${method} ${url}`);
		const described = Object.values(OPERATIONS).map(({ method, url }) => `${method} ${url}`);
		expect(described.toSorted()).toEqual(running.toSorted());
		expect(operations()).toHaveLength(described.length);
	});

	it('gives each operation a tag that it explains and a summary of its own', () => {
		const tags = new Set(document.tags.map(({ name }) => name));
		for (const { tags: own, operationId } of operations()) {
			expect(own, operationId).toHaveLength(1);
			expect(tags).toContain(own[0]);
		}
		const summaries = operations().map(({ summary }) => summary);
		expect(new Set(summaries).size).toBe(summaries.length);
		for (const summary of summaries) expect(summary).toMatch(/^\p{Lu}.{4,}[^.]$/u);
	});

	it('shows an example of every JSON body and answer, which its own schema takes', () => {
		// JSON Schema 2020-12, the dialect of OpenAPI 3.1.
		const ajv = new Ajv2020({ strict: false, validateFormats: false });
		ajv.addSchema(document, 'openapi');
		expect(medias().length).toBeGreaterThan(200);
		for (const { operationId, schema, example } of medias()) {
			expect(example, operationId).toBeDefined();
			const absolute = JSON.parse(JSON.stringify(schema).replaceAll('"#/components', '"openapi#/components')) as object;
			const isTaken = ajv.validate(absolute, example);
			expect(isTaken, `${operationId}: ${ajv.errorsText()} in ${JSON.stringify(example)}`).toBe(true);
		}
	});

	it('describes one shape for a thing in lists and alone', () => {
		const answerOf = (id: string, status = '200') =>
			operations().find(({ operationId }) => operationId === id)!.responses[status]!.content!['application/json']!
				.schema as { $ref?: string; items?: { $ref: string } };
		for (const [list, one, status] of [
			['listSeasons', 'getSeason', '200'],
			['listGarments', 'getGarment', '200'],
			['listPhotos', 'getPhoto', '200'],
			['listInspirations', 'changeInspiration', '200'],
			['listWishes', 'addWish', '201'],
			['listCandidates', 'changeCandidate', '200'],
			['listMakers', 'addMaker', '201'],
			['listDecisions', 'undo', '200'],
		] as const)
			expect(answerOf(list).items, list).toEqual(answerOf(one, status));
	});
});
