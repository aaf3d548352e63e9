'use server';

import { z } from 'zod';
import { act } from '@/app/_server/act';
import { theBook } from '@/app/_server/book/the-book';
import { typingContext } from '@/app/_server/book/typing-context';
import { teachCode } from '@/app/_server/codes/teach-code';
import { type Scanned, whatWasScanned } from '@/app/_server/codes/what-was-scanned';
import { addPlace, PLACE_KINDS } from '@/app/_server/places/add-place';
import { type ArrivalProduct, arrivalProduct } from '@/app/_server/products/arrival-product';
import { listProducts, listSystems, type ProductChoice } from '@/app/_server/products/product-page';
import { teachProduct } from '@/app/_server/products/teach-product';
import { type Reading, reading } from '@/app/_server/reading';
import { receiveContainers } from '@/app/_server/stock/receive-containers';
import { arrivalSchema, scanSchema } from '@/app/(shop)/arrive/schema';
import { meaningSchema, productSchema } from '@/app/(shop)/arrive/teach-schema';

/** What a scan means. Reads only; where the book cannot be read it says why, and the screen keeps the scan. */
export async function askBook(scan: unknown): Promise<Reading<Scanned>> {
  return reading(async () => {
    const { today } = await typingContext();
    return whatWasScanned(await theBook(), scanSchema.parse(scan), today);
  });
}

/** The products and resin systems to choose from. */
export async function readProducts(): Promise<Reading<{ products: ProductChoice[]; systems: string[] }>> {
  return reading(async () => {
    const book = await theBook();
    const [products, systems] = await Promise.all([listProducts(book), listSystems(book)]);
    return { products, systems };
  });
}

/** One product for the arrival card; undefined where it is gone. */
export async function readArrivalProduct(productId: unknown): Promise<ArrivalProduct | undefined> {
  return arrivalProduct(await theBook(), z.int().parse(productId));
}

export async function bookArrival(key: string, input: unknown) {
  return act(async () => arrivalSchema(await typingContext()), key, input, receiveContainers);
}

export async function teachNewProduct(key: string, input: unknown) {
  return act(async () => productSchema(await typingContext()), key, input, teachProduct);
}

export async function teachMeaning(key: string, input: unknown) {
  return act(async () => meaningSchema(await typingContext()), key, input, teachCode);
}

const placeSchema = z.object({
  name: z
    .string()
    .max(80, 'At most 80 characters.')
    .refine((name) => name.trim() !== '', 'Type what you call the place.'),
  kind: z.enum(PLACE_KINDS),
});

export async function addPlaceHere(key: string, input: unknown) {
  return act(placeSchema, key, input, addPlace);
}
