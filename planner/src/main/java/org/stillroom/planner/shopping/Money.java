package org.stillroom.planner.shopping;

/**
 * An amount of money; amounts of different currencies are never added.
 *
 * @param currency as the price was typed
 * @param amount zero or more
 */
public record Money(String currency, double amount) {}
