/**
 * Reads a text aloud with a voice that lives on this device. A voice that would send the words to
 * somebody's server is never used. Answers false where there is no such voice.
 */
export function readAloud(text: string, onend: () => void): boolean {
  if (!('speechSynthesis' in globalThis)) return false;
  const voice = ownVoice(navigator.language);
  if (!voice) return false;
  const utterance = new SpeechSynthesisUtterance(text);
  utterance.voice = voice;
  utterance.lang = voice.lang;
  utterance.rate = 0.85;
  utterance.onend = onend;
  utterance.onerror = onend;
  speechSynthesis.cancel();
  speechSynthesis.speak(utterance);
  return true;
}

export const stopReading = (): void => globalThis.speechSynthesis?.cancel();

/** A voice of this device, in the family's kind of English where it has one. */
export function ownVoice(language: string): SpeechSynthesisVoice | null {
  const local = (globalThis.speechSynthesis?.getVoices() ?? []).filter(
    (voice) => voice.localService && voice.lang.startsWith('en'),
  );
  return local.find((voice) => voice.lang === language) ?? local[0] ?? null;
}
