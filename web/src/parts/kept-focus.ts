import { useEffect, useRef } from 'react';

/**
 * A place whose parts vanish as they are done with. When one goes that held the focus, the focus moves to the first part marked `data-focus-next`,
 * so that the keyboard goes on there; `changes` = whatever changes when a part goes.
 */
export function useKeptFocus<Place extends HTMLElement>(changes: unknown) {
	const place = useRef<Place>(null);
	const held = useRef(false);
	useEffect(() => {
		const note = () => {
			held.current = place.current?.contains(document.activeElement) ?? false;
		};
		document.addEventListener('focusin', note);
		return () => document.removeEventListener('focusin', note);
	}, []);
	// biome-ignore lint/correctness/useExhaustiveDependencies: runs when a part goes, which `changes` tells
	useEffect(() => {
		if (!held.current || document.activeElement !== document.body) return;
		place.current?.querySelector<HTMLElement>('[data-focus-next]')?.focus();
	}, [changes]);
	return place;
}
