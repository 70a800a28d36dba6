import { Ajv, type ValidateFunction } from 'ajv';
import { type TSchema, Type } from 'typebox';
import { fieldPathWords } from '../language/field-word.ts';
import { say } from '../language/speak.ts';
import { CONDITIONS, PLACES, WAYS_OUT, YEAR_PARTS } from '../wardrobe/words/garment.ts';
import { KIND_NAMES } from '../wardrobe/words/kind.ts';
import { PALETTE_ROLES } from '../wardrobe/words/palette-colour.ts';
import { SLOTS } from '../wardrobe/words/slot.ts';

const text = Type.String();
const texts = Type.Array(text);
const oneOf = (values: readonly string[]) => Type.Unsafe({ type: 'string', enum: [...values] });
const orNull = (schema: TSchema) => Type.Union([schema, Type.Null()]);
const lab = Type.Array(Type.Number(), { minItems: 3, maxItems: 3 });
const amount = orNull(Type.Number());
const yearParts = Type.Array(oneOf(YEAR_PARTS));
const from = oneOf(['user', 'photo', 'none']);

/** What the judgements take for granted of each kind of entry. More fields may stand beside: an older or a later program wrote them. */
const SHAPES: Readonly<Record<string, TSchema>> = {
	season: Type.Object({
		id: text,
		name: text,
		yearPart: oneOf(YEAR_PARTS),
		startsOn: text,
		endsOn: text,
		targetCount: Type.Number(),
		quotas: Type.Partial(Type.Object(Object.fromEntries(SLOTS.map((slot) => [slot, Type.Number()])))),
		weights: Type.Object({}),
		baseCount: amount,
		colourCount: amount,
		waitingDays: Type.Number(),
		notes: text,
		feltGaps: texts,
		archived: Type.Boolean(),
	}),
	garment: Type.Object({
		id: text,
		name: text,
		kind: oneOf(KIND_NAMES),
		kindFrom: from,
		photoIds: texts,
		place: oneOf(PLACES),
		price: amount,
		boughtOn: orNull(text),
		yearParts,
		basic: Type.Boolean(),
		loved: amount,
		warmth: amount,
		condition: oneOf(CONDITIONS),
		conditionSince: Type.Optional(text),
		wayOut: orNull(oneOf(WAYS_OUT)),
		notes: text,
		care: text,
		addedAt: text,
	}),
	inspiration: Type.Object({
		id: text,
		seasonId: text,
		photoId: text,
		title: text,
		group: text,
		pieceKinds: Type.Optional(Type.Array(Type.Object({ piece: Type.Number(), kind: oneOf(KIND_NAMES) }))),
	}),
	wish: Type.Object({
		id: text,
		seasonId: text,
		name: text,
		slot: oneOf(SLOTS),
		kind: orNull(oneOf(KIND_NAMES)),
		target: orNull(lab),
		tolerance: Type.Number(),
		yearParts,
		priceLimit: amount,
		wantedSince: text,
		state: oneOf(['open', 'answered', 'dropped']),
		seenIn: Type.Optional(text),
	}),
	candidate: Type.Object({
		id: text,
		seasonId: text,
		photoId: text,
		name: text,
		kind: oneOf(KIND_NAMES),
		kindFrom: from,
		price: amount,
		used: Type.Boolean(),
		state: oneOf(['open', 'bought', 'passed']),
	}),
	maker: Type.Object({ id: text, name: text, notes: text }),
	palette: Type.Object({
		colours: Type.Array(
			Type.Object({ id: text, lab, spread: Type.Number(), weight: Type.Number(), role: oneOf(PALETTE_ROLES) }),
		),
	}),
	'line-up': Type.Object({
		seasonId: text,
		garmentIds: texts,
		mustKeep: texts,
		neverUse: texts,
		gapIds: Type.Optional(texts),
	}),
	wear: Type.Object({ garmentId: text, on: text }),
	'pair-word': Type.Object({ garmentA: text, garmentB: text, word: oneOf(['approved', 'refused']) }),
};

const ajv = new Ajv();
const checks = new Map<string, ValidateFunction>();

/** `undefined` where it is no JSON. */
function parsed(body: string): unknown {
	try {
		return JSON.parse(body) as unknown;
	} catch {
		return undefined;
	}
}

/** What is wrong with the body of an entry of this kind, in short; null where it has the form that the judgements take for granted. */
export function misshapenIn(kind: string, body: string): string | null {
	const shape = SHAPES[kind];
	if (!shape) return say('home.unknownKind', { kind });
	const check = checks.get(kind) ?? ajv.compile(shape);
	checks.set(kind, check);
	const entry = parsed(body);
	if (entry === undefined) return say('home.anotherForm');
	if (check(entry)) return null;
	const [first] = check.errors ?? [];
	const path = (first?.instancePath ?? '').split('/').filter(Boolean);
	const missing = first?.params.missingProperty;
	const where = missing === undefined ? path : [...path, String(missing)];
	return where.length === 0
		? say('home.anotherForm')
		: say('home.fieldOfAnotherForm', { field: fieldPathWords(where) });
}
