import { KINDS } from '../../wardrobe/words/kind.ts';

type Schema = {
	readonly type?: string;
	readonly enum?: readonly unknown[];
	readonly const?: unknown;
	readonly anyOf?: readonly Schema[];
	readonly items?: Schema;
	readonly minItems?: number;
	readonly properties?: Readonly<Record<string, Schema>>;
	readonly required?: readonly string[];
	readonly additionalProperties?: boolean | Schema;
	readonly minimum?: number;
	readonly maximum?: number;
	readonly format?: string;
	readonly pattern?: string;
	readonly title?: string;
};

const ID = '7d0c5b62-6d7e-4c7f-9a53-2f5f0a6c1b9e';
const PHOTO_ID = '9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08';

/** Examples of fields by name: made up, for the interface's own description only. */
const BY_NAME: Readonly<Record<string, unknown>> = {
	name: 'Navy jumper',
	seasonName: 'Spring 2027',
	title: 'Quay in the morning',
	group: 'colours',
	photoId: PHOTO_ID,
	photoIds: [PHOTO_ID],
	originalName: 'IMG_2041.jpg',
	mediaType: 'image/jpeg',
	startsOn: '2027-03-01',
	endsOn: '2027-05-31',
	on: '2027-03-14',
	boughtOn: '2025-10-02',
	wantedSince: '2027-01-20',
	madeOn: '2027-03-14',
	addedAt: '2027-03-01T08:30:00.000Z',
	changedAt: '2027-03-14T19:05:00.000Z',
	deletedAt: '2027-03-14T19:05:00.000Z',
	at: '2027-03-14T19:05:00.000Z',
	takenAt: '2027-02-27T10:12:00',
	lab: [26.1, 3.2, -21.4],
	target: [45, 38, 40],
	price: 48,
	priceLimit: 60,
	sentence: 'The navy jumper is 2 from navy, a colour of the palette.',
	message: 'Expected the id of a season that exists; "spring" names none.',
	reason: 'a white sheet lies in the picture',
	code: 'not-found',
	notes: '',
	care: 'wool wash, dry flat',
	source: 'second-hand shop in Mill Lane',
	version: 12,
	kind: Object.keys(KINDS)[0],
};

const firstPlain = (schemas: readonly Schema[]): Schema =>
	schemas.find(({ type, properties }) => type !== 'null' && properties === undefined) ??
	schemas.find(({ type }) => type !== 'null') ??
	schemas[0]!;

/** Whether a value looks as the schema wants it, as far as an example needs. */
function suits(value: unknown, schema: Schema): boolean {
	if (schema.anyOf) return schema.anyOf.some((one) => suits(value, one));
	if (schema.enum) return schema.enum.includes(value);
	if (schema.pattern && typeof value === 'string' && !new RegExp(schema.pattern).test(value)) return false;
	if (schema.type === 'array') return Array.isArray(value) && value.every((one) => suits(one, schema.items ?? {}));
	if (schema.type === 'integer') return Number.isInteger(value);
	return typeof value === schema.type;
}

function exampleOfFields({ properties = {}, required = [] }: Schema): object {
	const wanted = required.length > 0 ? required : Object.keys(properties).slice(0, 1);
	return Object.fromEntries(wanted.map((name) => [name, exampleFor(properties[name]!, name)]));
}

function exampleFor(schema: Schema, name: string): unknown {
	if (name in BY_NAME && suits(BY_NAME[name], schema)) return BY_NAME[name];
	if (schema.const !== undefined) return schema.const;
	if (schema.enum) return schema.enum[0];
	if (schema.anyOf) return exampleFor(firstPlain(schema.anyOf), name);
	if (schema.type === 'array')
		return Array.from({ length: schema.minItems ?? 1 }, () => exampleFor(schema.items ?? {}, name.replace(/s$/, '')));
	if (schema.type === 'object') return exampleOfFields(schema);
	if (schema.type === 'string') return schema.format === 'date' ? '2027-03-14' : /id$/i.test(name) ? ID : 'text';
	if (schema.type === 'integer' || schema.type === 'number')
		return Math.max(schema.minimum ?? 0, Math.min(1, schema.maximum ?? 1));
	if (schema.type === 'boolean') return true;
	return null;
}

/** A value that the schema takes, with what is needed and no more. */
export const exampleOf = (schema: object): unknown => exampleFor(schema as Schema, '');
