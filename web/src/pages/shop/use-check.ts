import { useQuery } from '@tanstack/react-query';
import { call } from '../../api/call.ts';

/** Everything said of a candidate. */
export const useCheck = (candidateId: string) =>
	useQuery({
		queryKey: ['check', candidateId],
		queryFn: () => call('checkCandidate', { params: { id: candidateId } }),
		placeholderData: (previous) => previous,
	});
