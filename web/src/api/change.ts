import { useMutation } from '@tanstack/react-query';
import { useRef } from 'react';
import { refreshUnheard } from './live.ts';
import type { RequestProblem } from './request.ts';
import { newRequestKey, withRequestKey } from './request-key.ts';

/** An input on its way, and its written form. */
type Sent<Input> = { readonly input: Input; readonly what: string };

/** An input in a form that tells two of them apart; pictures are never the same as another. */
const written = (input: unknown): string =>
	JSON.stringify(input, (_name, value: unknown) => (ArrayBuffer.isView(value) ? newRequestKey() : value)) ?? '';

/**
 * A change sent to the program: `run` sends it, `problem` is what went wrong with the last one (show it beside the thing),
 * `busy` while it is on its way, `output` its answer until `reset`. The same change asked for again while it is on its way is the same one, and so is one that is tried again
 * because no answer came. What the program says was changed is fetched again.
 */
export function useChange<Input, Output>(
	send: (input: Input) => Promise<Output>,
	then?: (output: Output, input: Input) => void,
) {
	const sent = useRef<{ what: string; key: string } | null>(null);
	const onItsWay = useRef(new Set<string>());
	const mutation = useMutation<Output, RequestProblem, Sent<Input>>({
		mutationFn: ({ input, what }) => {
			if (sent.current?.what !== what) sent.current = { what, key: newRequestKey() };
			return withRequestKey(sent.current.key, () => send(input));
		},
		onSuccess: (output, { input }) => {
			sent.current = null;
			then?.(output, input);
		},
		onError: (problem) => {
			if (problem.code !== 'unreachable') sent.current = null;
			refreshUnheard(true);
		},
		onSettled: (_output, _problem, { what }) => {
			onItsWay.current.delete(what);
			refreshUnheard(false);
		},
	});
	const run = (input: Input) => {
		const what = written(input);
		if (onItsWay.current.has(what)) return;
		onItsWay.current.add(what);
		mutation.mutate({ input, what });
	};
	const { isPending, error, data, reset } = mutation;
	return { run, busy: isPending, problem: error, output: data, reset };
}
