### The journal as evidence.
### reviewed: no
record-disagrees = El registro no coincide con lo que este quiosco había firmado. Avise al supervisor; no borre nada.
record-unsigned = Por ahora no se puede firmar el registro. Todo se escribe igualmente. Avise al supervisor.
record-second-place = No está el segundo lugar para los puntos de control del registro. Vuelva a poner la memoria. Todo se escribe igualmente.
