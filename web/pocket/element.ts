type Child = Node | string;

/** A new element with attributes and children; text never becomes markup. */
export function element<K extends keyof HTMLElementTagNameMap>(
	tag: K,
	attributes: Readonly<Record<string, string>> = {},
	...children: readonly Child[]
): HTMLElementTagNameMap[K] {
	const made = document.createElement(tag);
	for (const [name, value] of Object.entries(attributes)) made.setAttribute(name, value);
	made.append(...children);
	return made;
}

/** The element of the page's own markup with this id. */
export function elementWithId<T extends HTMLElement>(id: string, kind: new () => T): T {
	const found = document.getElementById(id);
	if (!(found instanceof kind)) throw new TypeError(`expected an element #${id} in the page`);
	return found;
}
