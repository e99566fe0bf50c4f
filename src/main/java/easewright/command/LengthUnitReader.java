package easewright.command;

import easewright.text.LengthUnit;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads {@code --unit}. */
final class LengthUnitReader implements ITypeConverter<LengthUnit> {
    @Override
    public LengthUnit convert(String value) {
        return LengthUnit.named(value)
                .orElseThrow(() -> new TypeConversionException("expected cm, mm or in, but was '" + value + "'"));
    }
}
