import { useMutation } from '@tanstack/react-query';
import { refreshSoon } from './refresh.ts';
import type { RequestProblem } from './request.ts';

/**
 * A change sent to the program: `run` sends it, `problem` is what went wrong with the last one (show it beside the thing),
 * `busy` while it is on its way, `output` its answer until `reset`. What is on view is fetched again afterwards.
 */
export function useChange<Input, Output>(
	send: (input: Input) => Promise<Output>,
	then?: (output: Output, input: Input) => void,
) {
	const mutation = useMutation<Output, RequestProblem, Input>({
		mutationFn: send,
		onSuccess: (output, input) => then?.(output, input),
		onSettled: () => refreshSoon(),
	});
	const { mutate, isPending, error, data, reset } = mutation;
	return { run: mutate, busy: isPending, problem: error, output: data, reset };
}
