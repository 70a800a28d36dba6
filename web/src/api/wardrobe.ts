import { useQuery } from '@tanstack/react-query';
import type { Report } from '../../../src/wardrobe/season/report.ts';
import type { Garment } from '../../../src/wardrobe/words/garment.ts';
import type { Inspiration, LineUpChoice, Season } from '../../../src/wardrobe/words/season.ts';
import type { PairWord, Wear } from '../../../src/wardrobe/words/wear.ts';
import type { CandidateDetails, Maker, Wish } from '../../../src/wardrobe/words/wish.ts';
import { queryOf } from './refresh.ts';

const use = <T>(path: string) => useQuery({ ...queryOf<T>(path), placeholderData: (previous) => previous });

/** All seasons, archived ones too. */
export const useSeasons = () => use<Season[]>('/api/seasons');
/** Every judgement of the season. */
export const useReport = (seasonId: string) => use<Report>(`/api/seasons/${seasonId}/report`);
/** Every garment, whatever its place. */
export const useGarments = () => use<Garment[]>('/api/garments');
export const useInspirations = (seasonId: string) => use<Inspiration[]>(`/api/seasons/${seasonId}/inspirations`);
export const useWishes = (seasonId: string) => use<Wish[]>(`/api/seasons/${seasonId}/wishes`);
export const useCandidates = (seasonId: string) => use<CandidateDetails[]>(`/api/seasons/${seasonId}/candidates`);
export const useMakers = () => use<Maker[]>('/api/makers');
export const useLineUp = (seasonId: string) => use<LineUpChoice>(`/api/seasons/${seasonId}/line-up`);
export const useWears = (from: string, to: string) => use<Wear[]>(`/api/wears?from=${from}&to=${to}`);
export const usePairWords = () => use<PairWord[]>('/api/pair-words');
