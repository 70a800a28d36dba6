import type { FastifyDynamicSwaggerOptions } from '@fastify/swagger';
import { exampleOf } from './schemas/example-of.ts';
import { PAIRING_COOKIE } from './who-may-come-in.ts';

type Json = { [key: string]: unknown };

const isObject = (value: unknown): value is Json =>
	typeof value === 'object' && value !== null && !Array.isArray(value);

/** Keywords of ours, which mean nothing to others, begin like this. */
const OWN_KEYWORD = /^x-/;

/** The schema with every titled one in it put into `components` once, and named there by reference. */
function hoisted(schema: unknown, components: Json): unknown {
	if (Array.isArray(schema)) return schema.map((one) => hoisted(one, components));
	if (!isObject(schema)) return schema;
	const fields = Object.entries(schema).filter(([key]) => !OWN_KEYWORD.test(key));
	const inner = Object.fromEntries(fields.map(([key, value]) => [key, hoisted(value, components)]));
	const { title, description, ...rest } = inner;
	if (typeof title !== 'string') return inner;
	const before = components[title] as Json | undefined;
	components[title] ??= { title, ...(description ? { description } : {}), ...rest };
	const reference = { $ref: `#/components/schemas/${title}` };
	return description && description !== before?.description && before ? { ...reference, description } : reference;
}

/** Gives each JSON body and answer of an operation an example, and names its schemas by reference. */
function withExamples(content: Json, components: Json): void {
	for (const [mediaType, media] of Object.entries(content) as [string, Json][]) {
		if (mediaType === 'application/json' && isObject(media.schema)) media.example ??= exampleOf(media.schema);
		media.schema = hoisted(media.schema, components);
	}
}

/** Makes the document readable: components, an example for each operation. */
function finished(document: Json): Json {
	const components: Json = {};
	for (const operations of Object.values(document.paths as Json) as Json[])
		for (const operation of Object.values(operations) as Json[]) {
			const { requestBody, responses } = operation as { requestBody?: Json; responses?: Json };
			if (isObject(requestBody?.content)) withExamples(requestBody.content, components);
			for (const answer of Object.values(responses ?? {}) as Json[])
				if (isObject(answer.content)) withExamples(answer.content, components);
		}
	return { ...document, components: { ...(document.components as Json), schemas: components } };
}

/** What the interface's own description (OpenAPI 3.1) says beside the operations. */
export const openApiOptions: FastifyDynamicSwaggerOptions = {
	openapi: {
		openapi: '3.1.0',
		info: {
			title: 'Dyelot',
			version: '1',
			description:
				'Real colours from photos, and a small seasonal wardrobe judged by them. It listens on this computer only, and makes no request to any other.',
			license: { name: 'MIT', identifier: 'MIT' },
		},
		servers: [{ url: '/', description: 'this computer' }],
		components: {
			securitySchemes: {
				paired: {
					type: 'apiKey',
					in: 'cookie',
					name: PAIRING_COOKIE,
					description: 'A device of the local network, paired with the code. This computer itself needs none.',
				},
			},
		},
		security: [{}, { paired: [] }],
		tags: [
			{ name: 'home', description: 'The whole home: counts, demo, backup' },
			{ name: 'photos', description: 'Photos, what was read of them, corrections' },
			{ name: 'seasons', description: 'Seasons and their reports' },
			{ name: 'inspirations', description: "Pictures of a season's board" },
			{ name: 'palette', description: "A season's palette" },
			{ name: 'garments', description: 'The wardrobe' },
			{ name: 'wishes', description: 'The wish list' },
			{ name: 'candidates', description: 'Pieces found for sale' },
			{ name: 'makers', description: 'Makers that the user trusts' },
			{ name: 'line-up', description: 'The set chosen for a season' },
			{ name: 'wears', description: 'What was worn, and what goes together' },
			{ name: 'decisions', description: 'Undo, redo, bin' },
			{ name: 'exports', description: 'Everything as tables' },
			{ name: 'devices', description: 'Devices of the local network' },
		],
	},
	hideUntagged: true,
	transformObject: (document) =>
		('openapiObject' in document ? finished(document.openapiObject as Json) : document.swaggerObject) as never,
};
