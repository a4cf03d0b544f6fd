package org.hoopwright.patterns;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.module.ModuleDescriptor;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class ModuleTest {
  private final Module module = ModuleTest.class.getModule();

  @Test
  void testsRunInsideTheModule() {
    assertThat(module.isNamed()).isTrue();
    assertThat(module.getName()).isEqualTo("org.hoopwright.patterns");
  }

  @Test
  void bindsNoJson() {
    assertThat(
            module.getDescriptor().requires().stream()
                .map(ModuleDescriptor.Requires::name)
                .collect(Collectors.toSet()))
        .containsExactlyInAnyOrder(
            "java.base", "java.xml", "org.hoopwright", "tools.jackson.core", "info.picocli");
  }
}
