import { LANGUAGES, type Language } from '../../../src/colour/words/language.ts';
import { say } from '../../../src/language/speak.ts';
import { SelectField } from '../parts/field.tsx';
import { chooseLanguage, chosenLanguage } from './page-language.ts';

/** Each language by its own name, so that whoever reads it finds it. */
const OWN_NAMES: Readonly<Record<Language, string>> = {
	'en-GB': 'English (UK)',
	'en-US': 'English (US)',
	de: 'Deutsch',
};

/** The language of the page on this device. */
export const LanguageChoice = () => (
	<section className="field-narrow">
		<SelectField
			label={say('frame.language')}
			value={chosenLanguage() ?? ''}
			options={[
				{ value: '' as const, label: say('frame.likeBrowser') },
				...LANGUAGES.map((language) => ({ value: language, label: OWN_NAMES[language] })),
			]}
			onChange={(language) => chooseLanguage(language === '' ? null : language)}
		/>
		<p className="small quiet">{say('frame.reloads')}</p>
	</section>
);
