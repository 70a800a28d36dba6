/** Why a photo was given to us. */
export const PURPOSES = ['inspiration', 'garment', 'candidate'] as const;
export type Purpose = (typeof PURPOSES)[number];

/** What became of one uploaded file. */
export type IntakeItem =
	| {
			readonly name: string;
			readonly ok: true;
			readonly photoId: string;
			readonly entryId: string;
			/** Whether the home had the photo already. */
			readonly keptBefore: boolean;
	  }
	| { readonly name: string; readonly ok: false; readonly reason: string; readonly message: string };
