/** One character as RFC 3986, section 2.1, escapes it. */
const escaped = (character: string): string =>
	`%${character.charCodeAt(0).toString(16).padStart(2, '0').toUpperCase()}`;
const twiceEscaped = (character: string): string => escaped(character).replace('%', '%25');

/** The path with each of its characters but the first slash replaced in turn, and with all of them replaced. */
const eachReplaced = (path: string, replace: (character: string) => string): string[] => {
	const characters = [...path];
	const one = characters.slice(1).map((_, at) => {
		const changed = [...characters];
		changed[at + 1] = replace(characters[at + 1]!);
		return changed.join('');
	});
	return [...one, `/${characters.slice(1).map(replace).join('')}`];
};

/**
 * Spellings of one path that some program on the way takes for the same address: escaped character by character, escaped twice, in absolute
 * form (RFC 9112, section 3.2.2), with slashes doubled or added, in other case, with dot segments (RFC 3986, section 5.2.4).
 */
export function formsOf(path: string, host: string): string[] {
	const segments = path.split('/').slice(1);
	const inserted = (between: string) => segments.map((_, at) => `/${segments.toSpliced(at, 0, between).join('/')}`);
	return [
		path,
		...eachReplaced(path, escaped),
		...eachReplaced(path, twiceEscaped),
		`http://${host}${path}`,
		`http://${host}${path.replace('/a', '/%61')}`,
		`https://elsewhere.example${path}`,
		`${path}/`,
		`${path}//`,
		`${path}?`,
		`${path}?/api/pair`,
		`${path};/api/pair`,
		`${path}%00`,
		`${path}%2f`,
		...inserted(''),
		...inserted('.'),
		...inserted('%2e'),
		...inserted('x/..'),
		...inserted('x/%2e%2e'),
		...inserted('..%2f'),
		`/assets/..${path}`,
		`/assets/..%2f..${path}`,
		`/api/pair/..${path.slice(4)}`,
		`/api/pair/../..${path}`,
		path.toUpperCase(),
		...segments.map((segment, at) => `/${segments.with(at, segment.toUpperCase()).join('/')}`),
		path.replaceAll('/', '\\').replace('\\', '/'),
	];
}
