import { useEffect } from 'react';

const isTyping = (target: EventTarget | null) =>
	target instanceof HTMLElement && /^(INPUT|TEXTAREA|SELECT)$/.test(target.tagName);

/** Calls what belongs to a key while nothing is being typed; keys held together with others are left alone. */
export function useKeys(actions: Readonly<Record<string, () => void>>): void {
	useEffect(() => {
		const onKey = (event: KeyboardEvent) => {
			if (event.ctrlKey || event.metaKey || event.altKey || isTyping(event.target)) return;
			actions[event.key]?.();
		};
		document.addEventListener('keydown', onKey);
		return () => document.removeEventListener('keydown', onKey);
	});
}
