/**
 * Reads a text aloud with a voice that lives on this device. A voice that would send the words to
 * somebody's server is never used. Answers false where there is no such voice.
 */
export function readAloud(text: string, told: SpeechListener): boolean {
  if (!('speechSynthesis' in globalThis)) return false;
  const voice = ownVoice(speechSynthesis.getVoices(), navigator.language);
  if (!voice) return false;
  const utterance = new SpeechSynthesisUtterance(text);
  utterance.voice = voice;
  utterance.lang = voice.lang;
  utterance.rate = 0.85;
  utterance.onboundary = ({ name, charIndex }) => {
    if (name === 'word') told.onword(charIndex);
  };
  utterance.onend = told.onend;
  utterance.onerror = told.onend;
  speechSynthesis.cancel();
  speechSynthesis.speak(utterance);
  return true;
}

export const stopReading = (): void => globalThis.speechSynthesis?.cancel();

/** A voice of this device, in the family's kind of English where it has one. */
export function ownVoice<Voice extends Pick<SpeechSynthesisVoice, 'lang' | 'localService'>>(
  voices: readonly Voice[],
  language: string,
): Voice | null {
  const own = voices.filter((voice) => voice.localService && voice.lang.startsWith('en'));
  return own.find((voice) => voice.lang === language) ?? own[0] ?? null;
}

/** A text cut into words, each with where it begins, so that the one being read can be shown. */
export const wordsOf = (text: string): readonly SpokenWord[] =>
  [...text.matchAll(/\S+/g)].map((match) => ({ text: match[0], begins: match.index }));

export interface SpokenWord {
  readonly text: string;
  readonly begins: number;
}

interface SpeechListener {
  /** Where in the text the word begins that is being read. */
  readonly onword: (begins: number) => void;
  readonly onend: () => void;
}
