import { createContext, type ReactNode, use } from 'react';

/** Languages that the page can speak. A new one is a new name here and a column in each file of this folder; until a file has it, that room
 * speaks English. */
export const LANGUAGES = ['en'] as const;
export type Language = (typeof LANGUAGES)[number];

/** The same sentences in each language. Sentences with something in them are functions, so that each language orders its own words. */
export type Words<Sentences> = { readonly en: Sentences } & { readonly [Other in Language]?: Sentences };

export const wordsIn = <const Sentences extends object>(languages: Words<Sentences>): Words<Sentences> =>
  languages;

const LanguageContext = createContext<Language>('en');

export const LanguageProvider = ({
  language,
  children,
}: {
  readonly language: Language;
  readonly children: ReactNode;
}) => <LanguageContext value={language}>{children}</LanguageContext>;

/** The sentences of a room in the language that the person has chosen. */
export const useWords = <Sentences extends object>(words: Words<Sentences>): Sentences =>
  words[use(LanguageContext)] ?? words.en;
