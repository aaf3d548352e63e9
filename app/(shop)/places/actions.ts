'use server';

import { act } from '@/app/_server/act';
import { typingContext } from '@/app/_server/book/typing-context';
import { logAir } from '@/app/_server/climate/log-air';
import { removeSeason } from '@/app/_server/climate/remove-season';
import { setSeason } from '@/app/_server/climate/set-season';
import { addPlace } from '@/app/_server/places/add-place';
import { changePlace } from '@/app/_server/places/change-place';
import { noteTemperature } from '@/app/_server/places/note-temperature';
import { airLinesSchema, airSchema, removeSeasonSchema, seasonSchema } from '@/app/(shop)/places/climate-schema';
import { addPlaceSchema, changePlaceSchema, temperatureSchema } from '@/app/(shop)/places/schema';

export async function addPlaceAction(key: string, input: unknown) {
  return act(addPlaceSchema, key, input, addPlace);
}

export async function changePlaceAction(key: string, input: unknown) {
  return act(changePlaceSchema, key, input, changePlace);
}

export async function noteTemperatureAction(key: string, input: unknown) {
  return act(temperatureSchema, key, input, noteTemperature);
}

export async function noteAirAction(key: string, input: unknown) {
  return act(async () => airSchema(await typingContext()), key, input, logAir);
}

export async function pasteAirAction(key: string, input: unknown) {
  return act(async () => airLinesSchema(await typingContext()), key, input, logAir);
}

export async function setSeasonAction(key: string, input: unknown) {
  return act(async () => seasonSchema(await typingContext()), key, input, setSeason);
}

export async function removeSeasonAction(key: string, input: unknown) {
  return act(removeSeasonSchema, key, input, removeSeason);
}
