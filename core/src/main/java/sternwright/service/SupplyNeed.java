package sternwright.service;

/**
 * What a work takes from the stores.
 *
 * @param item id in the stores
 * @param fixed this many units
 * @param perCapacity plus this many units per litre the part holds
 * @param ifUnknownL litres to allow where the capacity is not known; said on the job card
 */
public record SupplyNeed(String item, double fixed, double perCapacity, double ifUnknownL) {}
