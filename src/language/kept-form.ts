/** Private-use characters of Unicode that hold a stored sentence together: no person types them. */
export const [BEGINS, PARTS, ENDS] = ['\uE000', '\uE001', '\uE002'] as const;

/** A value with a sign before it: a number stays one, since it may choose the form of a sentence. */
const marked = (value: string | number): string => (typeof value === 'number' ? `#${value}` : `:${value}`);

/** A sentence as it is stored: its name and what fills its blanks. */
export const keptForm = (name: string, blanks: Readonly<Record<string, string | number>>): string =>
	`${BEGINS}${[name, ...Object.entries(blanks).map(([blank, value]) => `${blank}=${marked(value)}`)].join(PARTS)}${ENDS}`;

/** Names in a row as they are stored. */
export const keptList = (names: readonly string[]): string =>
	keptForm('list', Object.fromEntries(names.map((name, place) => [String(place), name])));
