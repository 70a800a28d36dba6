/**
 * The types of what the interface answers. `npm run schemas` writes `answers.ts` from them: each as a TypeBox schema, with those that it is made
 * of and what their comments say; a test holds the two in step.
 */

export type { TwoGarments } from '../../app/decisions/garment-of-two.ts';
export type { PaletteAnswer } from '../../app/decisions/palette-answer.ts';
export type { Door } from '../../app/door.ts';
export type { Everything } from '../../app/exports.ts';
export type { GroundSet } from '../../app/grounds.ts';
export type { IntakeItem } from '../../app/intake-item.ts';
export type { StaleEntry } from '../../app/refuse-stale.ts';
export type { RestoreAnswer } from '../../app/restore-home.ts';
export type { Status } from '../../app/status.ts';
export type { GarmentImportAnswer } from '../../app/tables/import-garments.ts';
export type { WearImportAnswer } from '../../app/tables/import-wears.ts';
export type { LightTrial } from '../../app/tried-light.ts';
export type { PointColour } from '../../photo/read-photo.ts';
export type { BinEntry, Decision, PhotoRecord } from '../../store/store.ts';
export type { LineUpResult } from '../../wardrobe/line-up/line-up.ts';
export type { Swap } from '../../wardrobe/line-up/swaps.ts';
export type { WhatIf } from '../../wardrobe/line-up/what-if.ts';
export type { Partner } from '../../wardrobe/pairs/partners.ts';
export type { Report } from '../../wardrobe/season/report.ts';
export type { CandidateCheck } from '../../wardrobe/wishes/candidate.ts';
export type { Garment } from '../../wardrobe/words/garment.ts';
export type { Inspiration, LineUpChoice, Season } from '../../wardrobe/words/season.ts';
export type { PairWord, Wear } from '../../wardrobe/words/wear.ts';
export type { CandidateDetails, Maker, Wish } from '../../wardrobe/words/wish.ts';
