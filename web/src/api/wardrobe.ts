import { useQuery } from '@tanstack/react-query';
import type { call } from './call.ts';
import type { CalledId } from './operations.ts';
import { queryOf } from './refresh.ts';

const use = <Id extends CalledId>(id: Id, given: Parameters<typeof call<Id>>[1]) =>
	useQuery({ ...queryOf(id, given), placeholderData: (previous) => previous });
const ofSeason = (id: string) => ({ params: { id } });

/** All seasons, archived ones too. */
export const useSeasons = () => use('listSeasons', {});
/** Every judgement of the season. */
export const useReport = (seasonId: string) => use('getReport', ofSeason(seasonId));
/** Every garment, whatever its place. */
export const useGarments = () => use('listGarments', {});
export const useInspirations = (seasonId: string) => use('listInspirations', ofSeason(seasonId));
export const useWishes = (seasonId: string) => use('listWishes', ofSeason(seasonId));
export const useCandidates = (seasonId: string) => use('listCandidates', ofSeason(seasonId));
export const useMakers = () => use('listMakers', {});
export const useLineUp = (seasonId: string) => use('getLineUp', ofSeason(seasonId));
export const useWears = (from: string, to: string) => use('listWears', { query: { from, to } });
export const usePairWords = () => use('listPairWords', {});
