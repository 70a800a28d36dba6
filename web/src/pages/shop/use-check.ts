import { useQuery } from '@tanstack/react-query';
import type { CandidateCheck } from '../../../../src/wardrobe/wishes/candidate.ts';
import { get } from '../../api/request.ts';

/** Everything said of a candidate. */
export const useCheck = (candidateId: string) =>
	useQuery({
		queryKey: ['check', candidateId],
		queryFn: () => get<CandidateCheck>(`/api/candidates/${candidateId}/check`),
		placeholderData: (previous) => previous,
	});
