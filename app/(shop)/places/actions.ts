'use server';

import { act } from '@/app/_server/act';
import { addPlace } from '@/app/_server/places/add-place';
import { changePlace } from '@/app/_server/places/change-place';
import { noteTemperature } from '@/app/_server/places/note-temperature';
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
